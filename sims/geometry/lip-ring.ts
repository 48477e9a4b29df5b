import { withDefect, type FaceShape } from './face-shape.ts';
import { POLAR_STEPS } from './polar-table.ts';
import { surfaceZ } from './two-radius-surface.ts';

/** Places along the middle of a labral lip: where a search for contacts on it begins. */
export interface LipRing {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** How many places a look goes on at a time. */
  readonly stride: number;
}

/** One place a degree. */
const PLACES = 360;

/** The middle of the lip at every degree; where a defect has taken it the height is −Infinity. */
export function lipRing(shape: FaceShape, stride: number): LipRing {
  const { labrum, polar, curvatureRadiusAP, curvatureRadiusSI } = shape;
  const count = labrum === undefined ? 0 : PLACES;
  const ring = {
    x: new Float64Array(count),
    y: new Float64Array(count),
    z: new Float64Array(count),
    stride,
  };
  for (let i = 0; i < count; i++) {
    const angle = (2 * Math.PI * i) / count;
    const radius = polar.radius[i * (POLAR_STEPS / count)] ?? 0;
    const distance = radius - (labrum?.width ?? 0) / 2;
    const x = distance * Math.cos(angle);
    const y = distance * Math.sin(angle);
    ring.x[i] = x;
    ring.y[i] = y;
    ring.z[i] =
      withDefect(shape, angle, radius) < distance
        ? -Infinity
        : surfaceZ(1 / curvatureRadiusAP, 1 / curvatureRadiusSI, x, y) + (labrum?.height ?? 0) / 2;
  }
  return ring;
}
