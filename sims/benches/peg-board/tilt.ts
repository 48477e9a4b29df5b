import type { Point } from '../../figures/view.ts';
import type { SeatSolution } from '../../mechanics/index.ts';

/**
 * How a rigid back stands. Its separation from the bone, straight off it, is a h + b x + c y in mm, positive where open; on a
 * flat back h is 1, on a round one of radius R it is √(1 − (x² + y²) / R²).
 */
export interface Tilt {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  /** mm; Infinity, or left out, for a flat back */
  readonly radius?: number;
}

export function gapAt({ a, b, c, radius = Infinity }: Tilt, { x, y }: Point): number {
  const h = radius === Infinity ? 1 : Math.sqrt(Math.max(0, 1 - (x ** 2 + y ** 2) / radius ** 2));
  return a * h + b * x + c * y;
}

export const isFlat = ({ radius = Infinity }: Tilt): boolean => radius === Infinity;

/**
 * From the movement of a socket whose back has its lowest place at `level`.
 *
 * Derivation: the back’s place p on the sphere about C = (0, 0, level + R) pushes toward C, so its gap is
 * (C − p) · (u + θ × p) / R, in which (C − p) · (θ × p) = θ · (p × C).
 */
export function tiltOf(
  { displacement: u, rotation: turn }: Pick<SeatSolution, 'displacement' | 'rotation'>,
  radius: number,
  level: number,
): Tilt {
  if (radius === Infinity) return { a: u[2], b: 0 - turn[1], c: turn[0], radius };
  const middle = level + radius;
  return {
    a: u[2],
    b: (0 - u[0] - middle * turn[1]) / radius,
    c: (middle * turn[0] - u[1]) / radius,
    radius,
  };
}

/**
 * The place from which the separation rises on all sides, or, where a is above 0, falls: inside the edge if it lies there,
 * else on it. A flat back has it on its edge.
 */
export function extremeOf(edge: readonly Point[], tilt: Tilt): Point {
  const { a, b, c, radius = Infinity } = tilt;
  const sign = a > 0 ? -1 : 1;
  const least = edge.reduce((best, at) =>
    sign * gapAt(tilt, at) < sign * gapAt(tilt, best) ? at : best,
  );
  if (radius === Infinity || a === 0) return least;
  // Where the sphere's normal lies along the gap's own direction: (b R, c R, a).
  const size = Math.hypot(b * radius, c * radius, a);
  const x = (-sign * b * radius * radius) / size;
  const y = (-sign * c * radius * radius) / size;
  return isInside(edge, { x, y }) ? { x, y } : least;
}

/** Whether a place lies within a convex run of places that goes round from the front over the top. */
export function isInside(edge: readonly Point[], at: Point): boolean {
  return edge.every((from, i) => {
    const to = edge[(i + 1) % edge.length] ?? from;
    return (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x) >= 0;
  });
}
