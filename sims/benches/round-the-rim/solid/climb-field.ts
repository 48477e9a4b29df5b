import { pathOverFace, rimPoint } from '../../../geometry/index.ts';
import type { SoundShape } from '../sound-shape.ts';

const DIRECTIONS = 72;
const SHARES = 20;

/** How high a ball has climbed when its centre stands over a place of the face, by direction and share of the way out. */
export interface ClimbField {
  /** Evenly from anterior toward superior, once round. */
  readonly rays: readonly ClimbRay[];
  /** mm */
  readonly greatest: number;
}

export interface ClimbRay {
  /** rad */
  readonly direction: number;
  /** From the middle to the rim, mm. */
  readonly length: number;
  /** Evenly from the middle to the rim, mm. */
  readonly climbs: readonly number[];
}

export function climbField({ face, ballRadius }: SoundShape): ClimbField {
  const rays = Array.from({ length: DIRECTIONS }, (_, i) => {
    const direction = (2 * Math.PI * i) / DIRECTIONS;
    const { x, y } = rimPoint(face, direction);
    const length = Math.hypot(x, y) * (1 - 1e-9);
    const places = Array.from({ length: SHARES + 1 }, (_, j) => (length * j) / SHARES);
    const climbs = pathOverFace(face, ballRadius, direction, places).map(({ climb }) => climb);
    return { direction, length, climbs };
  });
  return { rays, greatest: Math.max(...rays.flatMap(({ climbs }) => climbs)) };
}

/** The climb at a distance from the middle in a direction, mm, between the rays computed. */
export function climbIn({ rays }: ClimbField, direction: number, distance: number): number {
  const turns = direction / (2 * Math.PI);
  const place = (turns - Math.floor(turns)) * rays.length;
  const i = Math.floor(place) % rays.length;
  const share = place - Math.floor(place);
  const next = (i + 1) % rays.length;
  return climbOn(rays[i], distance) * (1 - share) + climbOn(rays[next], distance) * share;
}

/** The climb on one ray; beyond its end as at its end. */
function climbOn(ray: ClimbRay | undefined, distance: number): number {
  if (ray === undefined) return 0;
  const last = ray.climbs.length - 1;
  const place = Math.max(0, Math.min(1, distance / ray.length)) * last;
  const i = Math.min(last - 1, Math.floor(place));
  const from = ray.climbs[i] ?? 0;
  return from + ((ray.climbs[i + 1] ?? from) - from) * (place - i);
}

/** Where a ball has climbed so high: for each ray the distance from the middle, mm, or null where it never does. */
export function isoline({ rays }: ClimbField, climb: number): readonly (number | null)[] {
  return rays.map(({ climbs, length }) => {
    const i = climbs.findIndex((value, j) => j > 0 && value >= climb);
    if (i < 1) return null;
    const from = climbs[i - 1] ?? 0;
    const to = climbs[i] ?? from;
    const share = to > from ? (climb - from) / (to - from) : 0;
    return (length * (i - 1 + share)) / (climbs.length - 1);
  });
}
