import { DRAG_LAG, DRAG_SPEED, FORCE_RISE_SECONDS, UPDATE_SECONDS } from './constants.ts';
import { springRatio, type Sideways, type SpringEnd } from './spring.ts';
import { clamp } from './vector.ts';

/*
 * Side forces a visitor sets. As everywhere below the scene, a side force is in units of the compressive load, so that
 * "force" and "ratio" are one number.
 */

/** A side force set by hand. */
export interface HandForce {
  readonly kind: 'hand';
  readonly target: number;
  /** What of it has come on so far. */
  readonly ratio: number;
}

/** The ball drawn along by a spring whose far end follows a pointer. */
export interface Drag extends SpringEnd {
  readonly kind: 'drag';
  readonly target: number;
  readonly ratio: number;
}

export const noForce: HandForce = { kind: 'hand', target: 0, ratio: 0 };

export function startDrag(ball: Sideways, target: number): Drag {
  return { kind: 'drag', target, end: ball.translation, endSpeed: 0, ratio: 0 };
}

/** @param scale ratio that comes on within the rise time at the least */
export function nextHandForce(hand: HandForce, scale: number): HandForce {
  const { target, ratio } = hand;
  const rate = Math.max(scale, Math.abs(target), Math.abs(ratio)) / FORCE_RISE_SECONDS;
  const most = rate * UPDATE_SECONDS;
  return { ...hand, ratio: ratio + clamp(target - ratio, -most, most) };
}

/** @param loadAcceleration mm/s² that the compressive load gives the ball */
export function nextDrag(drag: Drag, ball: Sideways, loadAcceleration: number): Drag {
  const endSpeed = clamp((drag.target - drag.end) / DRAG_LAG, -DRAG_SPEED, DRAG_SPEED);
  const spring = { end: drag.end + endSpeed * UPDATE_SECONDS, endSpeed };
  return { ...drag, ...spring, ratio: springRatio(spring, ball, loadAcceleration) };
}
