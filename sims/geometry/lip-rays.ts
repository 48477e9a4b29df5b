import type { FaceShape } from './face-shape.ts';
import { labrumRise } from './labrum.ts';
import { polarRadius } from './polar-table.ts';
import type { RimRun } from './rim-samples.ts';
import { surfaceZ } from './two-radius-surface.ts';

/**
 * The labral lip on the ray to every place of the rim, by the chord across it: what a search for contacts looks at first.
 * {@link NUMBERS} numbers for each place one after the other, as they are read together in the innermost loop; 0 where
 * no lip lies inward of the place.
 */
export type LipRays = Float64Array;

/** Numbers for each place, and where each of them stands. */
export const NUMBERS = 10;

/** Direction of the ray. */
export const COSINE = 0;
export const SINE = 1;
/** Distance of the middle of the lip from that of the face, and half the width of the lip, mm. */
export const MIDDLE = 2;
export const HALF = 3;
/** Slope of the chord from the inner edge to the rim, sine of its angle, and one over its cosine. */
export const SLOPE = 4;
export const LEAN = 5;
export const SECANT = 6;
/** One over the cube of the secant. */
export const EASE = 7;
/** How far the lip lies below the chord halfway across, over the square of half the width, 1/mm. */
export const BOW = 8;
/** Height at which the chord would meet the middle of the face, mm. */
export const BASE = 9;

/** The places of a rim. */
interface Places {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** The rays to all places of a rim. */
export function lipRays(shape: FaceShape, places: Places, runs: readonly RimRun[]): LipRays {
  const rays = new Float64Array(NUMBERS * places.x.length);
  for (const { piece, first, last } of runs) {
    for (let i = first; piece.bearsLip && i <= last; i++) layRay(rays, shape, places, i);
  }
  return rays;
}

function layRay(
  rays: LipRays,
  { curve, labrum, curvatureRadiusAP, curvatureRadiusSI }: FaceShape,
  { x, y, z }: Places,
  i: number,
): void {
  const angle = Math.atan2(y[i] ?? 0, x[i] ?? 0);
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  const edge = Math.hypot(x[i] ?? 0, y[i] ?? 0);
  const { radius } = polarRadius(curve, angle);
  const heightOf = (d: number): number =>
    surfaceZ(1 / curvatureRadiusAP, 1 / curvatureRadiusSI, d * cosine, d * sine) +
    labrumRise(labrum, radius, d);
  const inner = radius - (labrum?.width ?? 0);
  // Where a cut leaves the lip there is none inward of it: the slope is then that a little further out.
  const across = Math.max(edge - inner, NARROWEST * edge);
  const half = across / 2;
  const low = heightOf(inner);
  const top = heightOf(inner + across);
  const slope = (top - low) / across;
  const secant = Math.hypot(1, slope);
  const numbers: Record<number, number> = {
    [COSINE]: cosine,
    [SINE]: sine,
    [MIDDLE]: edge - half,
    [HALF]: half,
    [SLOPE]: slope,
    [LEAN]: slope / secant,
    [SECANT]: secant,
    [EASE]: secant ** -3,
    [BOW]: Math.max(0, (low + top) / 2 - heightOf(inner + half)) / half ** 2,
    [BASE]: (z[i] ?? 0) - slope * edge,
  };
  for (let n = 0; n < NUMBERS; n++) rays[NUMBERS * i + n] = numbers[n] ?? 0;
}

/** Share of the way to the rim that a chord needs to have a slope in spite of rounding. */
const NARROWEST = 1e-6;

/** One of the numbers of a place. */
export const ofRay = (rays: LipRays, i: number, number: number): number =>
  rays[NUMBERS * i + number] as number;
