import { sphericalSocket, type SphericalSocket } from '../../sims/geometry/index.ts';

/** A socket of which print gives radius of curvature and depth: its width is the chord at that depth, 2√(2Rd − d²). */
export function socketOf(curvatureRadius: number, depth: number): SphericalSocket {
  return sphericalSocket({
    curvatureRadius,
    width: 2 * Math.sqrt(2 * curvatureRadius * depth - depth ** 2),
  });
}

/** `count` numbers from `low` to `high`, evenly spaced, both ends included. */
export function spread(low: number, high: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
}

export const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
