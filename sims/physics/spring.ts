import { LARGEST_RATIO, SPRING_DAMPING_RATIO, SPRING_STIFFNESS } from './constants.ts';
import { clamp } from './vector.ts';

/** The ball as whatever pushes it feels it: translation, mm, and its rate, mm/s. */
export interface Sideways {
  readonly translation: number;
  readonly speed: number;
}

/** The far end of the spring: mm and mm/s. */
export interface SpringEnd {
  readonly end: number;
  readonly endSpeed: number;
}

/**
 * Force of the damped spring on the ball along +x, in compressive loads: all that pushes the ball sideways.
 *
 * The critical damping of a mass that its load accelerates by A, on a spring of κ loads per mm, is 2√(κ / A) loads per
 * mm/s.
 *
 * @param loadAcceleration A, mm/s²
 */
export function springRatio(
  { end, endSpeed }: SpringEnd,
  { translation, speed }: Sideways,
  loadAcceleration: number,
): number {
  const damping = 2 * SPRING_DAMPING_RATIO * Math.sqrt(SPRING_STIFFNESS / loadAcceleration);
  const ratio = SPRING_STIFFNESS * (end - translation) + damping * (endSpeed - speed);
  return clamp(ratio, -LARGEST_RATIO, LARGEST_RATIO);
}
