import {
  rimLine,
  rimPoint,
  surfaceHeight,
  type Face,
  type RimPoint,
} from '../../../geometry/index.ts';
import type { SoundShape } from '../sound-shape.ts';
import { bands, nothing, type MeshArrays, type Spot } from './bands.ts';
import { climbIn, isoline, type ClimbField } from './climb-field.ts';

/** Where the body under the face is cut off, mm below the deepest point; for looks. */
const FOOT = -7;
/** How much wider than the rim the foot is, a share of it. */
const FLARE = 1.05;
const HOLLOW_RINGS = 18;
const LIP_RINGS = 4;
const LOST_RINGS = 5;
/** Lines lie so much above the surface, mm, that its facets do not hide them. */
const LIFT = 0.12;
const lifted = ([x, y, z]: Spot): Spot => [x, y, z + LIFT];

/** The hollow inside the lip, each corner with its share of the greatest climb. */
export function hollowMesh({ face, whole, bare }: SoundShape, field: ClimbField): MeshArrays {
  const ends = rimLine(face).map((point) => hollowEnd(face, bare, point));
  const mesh = bands(
    ends.map(({ direction, share, length }) =>
      Array.from({ length: HOLLOW_RINGS + 1 }, (_, j) =>
        spotOn(whole, direction, (length * share * j) / HOLLOW_RINGS),
      ),
    ),
  );
  const shares = ends.flatMap(({ direction, share, length }) =>
    Array.from({ length: HOLLOW_RINGS + 1 }, (_, j) => {
      const climb = climbIn(field, direction, (length * share * j) / HOLLOW_RINGS);
      return Math.min(1, Math.max(0, climb / field.greatest));
    }),
  );
  return { ...mesh, shares };
}

/** The lip; no triangles where there is none. */
export function lipMesh({ face, whole, bare, shape }: SoundShape): MeshArrays {
  if (!shape.lip) return nothing;
  return bands(
    rimLine(face).map((point) => {
      const { direction, share, length } = hollowEnd(face, bare, point);
      return Array.from({ length: LIP_RINGS + 1 }, (_, j) =>
        spotOn(whole, direction, length * (share + ((1 - share) * j) / LIP_RINGS)),
      );
    }),
  );
}

/** The body's side, from the rim that is left down to where it is cut off. */
export function wallMesh({ face }: SoundShape): MeshArrays {
  return bands(
    rimLine(face).map(({ x, y, z }) => [
      [x, y, z],
      [x * FLARE, y * FLARE, FOOT],
    ]),
  );
}

/** What a defect has taken: its surface and its outer side; no triangles where nothing is. */
export function lostMesh({ face, bare }: SoundShape): MeshArrays {
  if (face.defect === undefined) return nothing;
  const rays = rimLine(bare).map((outer) => {
    const direction = Math.atan2(outer.y, outer.x);
    const length = Math.hypot(outer.x, outer.y);
    const left = lengthOf(rimPoint(face, direction));
    const top = Array.from({ length: LOST_RINGS + 1 }, (_, j) =>
      spotOn(bare, direction, left + ((length - left) * j) / LOST_RINGS),
    );
    const foot: Spot = [outer.x * FLARE, outer.y * FLARE, FOOT];
    return length - left > 1e-6 ? [...top, foot] : null;
  });
  return bands(rays);
}

/** The rim that is left, as a closed line. */
export function rimSpots({ face }: SoundShape): readonly Spot[] {
  const points = rimLine(face).map(({ x, y, z }): Spot => [x, y, z]);
  const [first] = points;
  return first === undefined ? points : [...points, first];
}

/** Lines of equal climb on the surface. */
export function isolineSpots(
  { whole }: SoundShape,
  field: ClimbField,
  step: number,
): readonly (readonly Spot[])[] {
  const count = Math.max(0, Math.ceil(field.greatest / step) - 1);
  return Array.from({ length: count }, (_, i) => isoline(field, (i + 1) * step)).flatMap(
    (radii) => {
      const runs: Spot[][] = [[]];
      [...radii, radii[0] ?? null].forEach((radius, i) => {
        const ray = field.rays[i % field.rays.length];
        if (radius !== null && ray !== undefined)
          runs.at(-1)?.push(lifted(spotOn(whole, ray.direction, radius)));
        else runs.push([]);
      });
      return runs.filter((run) => run.length > 1);
    },
  );
}

/** Where the hollow ends toward a place of the rim: at the lip or at the rim, as a share of the way there. */
function hollowEnd(
  face: Face,
  bare: Face,
  point: RimPoint,
): { readonly direction: number; readonly length: number; readonly share: number } {
  const direction = Math.atan2(point.y, point.x);
  const length = lengthOf(point);
  const inner = lengthOf(rimPoint(bare, direction)) - (face.labrum?.width ?? 0);
  return { direction, length, share: Math.min(1, inner / length) };
}

function lengthOf({ x, y }: RimPoint): number {
  return Math.hypot(x, y);
}

/** A place of the surface on a ray; at the rim itself rounding may not push it off. */
function spotOn(face: Face, direction: number, at: number): Spot {
  const x = at * Math.cos(direction);
  const y = at * Math.sin(direction);
  const inside = 1 - 1e-9;
  return [x, y, surfaceHeight(face, x * inside, y * inside)];
}
