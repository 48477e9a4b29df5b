/** Every tolerance and guard of the geometry module. Lengths in mm, angles in rad. */

/** Relative slack within which two lengths count as equal: a radius rebuilt from a depth differs from the given one by rounding only. */
export const LENGTH_TOLERANCE = 1e-9;

/** A hollow less deep than this share of its half-width is flat: the squares of its radius would soon leave the numbers. */
export const FLAT_TOLERANCE = 1e-12;

/** An angle this close to a right angle (rad) is treated as one: its tangent is infinite, not merely large. */
export const RIGHT_ANGLE_TOLERANCE = 1e-9;

export const RIGHT_ANGLE = Math.PI / 2;

/**
 * Returns `value` if it is a finite number in [min, max].
 *
 * @throws RangeError naming the argument, the value and the allowed range.
 */
export function inRange(
  name: string,
  value: number,
  min: number,
  max: number,
  unit: string,
): number {
  if (typeof value !== 'number' || !Number.isFinite(value) || value < min || value > max) {
    const upper = Number.isFinite(max) ? `${max}` : 'any larger finite value';
    const suffix = unit === '' ? '' : ` ${unit}`;
    throw new RangeError(`${name} is ${value}; allowed: ${min} to ${upper}${suffix}`);
  }
  return value;
}

/**
 * As {@link inRange} for a length, without the lower end: `value` must be finite, greater than 0 and at most `max`, which
 * it may pass by {@link LENGTH_TOLERANCE}.
 */
export function positive(name: string, value: number, unit: string, max = Infinity): number {
  const isFinitePositive = typeof value === 'number' && Number.isFinite(value) && value > 0;
  if (!isFinitePositive || value > max * (1 + LENGTH_TOLERANCE)) {
    const allowed = Number.isFinite(max) ? `above 0 to ${max}` : 'any finite value above 0';
    throw new RangeError(`${name} is ${value}; allowed: ${allowed} ${unit}`);
  }
  return value;
}

/** Arc sine (rad) of a ratio that rounding may have carried a hair outside [−1, 1]. */
export function clampedAsin(ratio: number): number {
  return Math.asin(Math.max(-1, Math.min(1, ratio)));
}

/** Tangent of an angle in [0, ∞); Infinity at and beyond a right angle, never a negative number. */
export function slopeOf(angle: number): number {
  return angle >= RIGHT_ANGLE - RIGHT_ANGLE_TOLERANCE ? Infinity : Math.tan(angle);
}
