import type { SphericalSocket } from '../geometry/index.ts';
import {
  AVERAGING_SECONDS,
  CROSSING_SECONDS,
  FALL_OF_SCALE,
  FALL_SECONDS,
  FALL_SHARE,
  FALL_TRAVEL,
  INERTIAL_SHARE,
  LARGEST_RATIO,
  LEAST_SCALE,
  RISE_DOUBLES_AT,
  RISE_SECONDS,
  SPRING_STIFFNESS,
  UPDATE_SECONDS,
} from './constants.ts';
import { springRatio, type Sideways, type SpringEnd } from './spring.ts';

/*
 * The push that measures the ratio at slip, as a testing machine would: a spring's far end moves outward, slowly enough
 * that inertia has no part; the spring's force is the reading. The force cannot outrun the ball as a dead weight would:
 * when the ball yields, the spring slackens, so the largest reading is what the cup could stand up to.
 */

/** How fast a push goes: how long it takes to watch, not what it measures. */
export interface Pace {
  /** What the compressive load gives the ball, mm/s². */
  readonly loadAcceleration: number;
  /** A ratio of the size this cup may stand up to. */
  readonly scale: number;
  /** mm/s */
  readonly topSpeed: number;
  /** mm/s² */
  readonly acceleration: number;
}

export interface SlowPush extends SpringEnd {
  readonly kind: 'push';
  readonly pace: Pace;
  readonly ratio: number;
  /** The ratio and the ball's speed (mm/s) with the engine's jitter averaged out. */
  readonly steadyRatio: number;
  readonly ballSpeed: number;
  /** The largest steady ratio, and the translation it was met at, mm. */
  readonly peak: number;
  readonly peakTranslation: number;
  /** How long the ball has now been further out under a ratio well below the peak, s. */
  readonly fallingSeconds: number;
}

/** The pace for a socket: its scale from the slope of the chord from deepest point to rim, doubled, and the friction. */
export function paceOf(socket: SphericalSocket, friction: number, loadAcceleration: number): Pace {
  const scale = Math.max(LEAST_SCALE, (4 * socket.depth) / socket.width + friction);
  return {
    loadAcceleration,
    scale,
    topSpeed: socket.width / 2 / CROSSING_SECONDS,
    acceleration: (INERTIAL_SHARE * loadAcceleration * scale) / (1 + scale ** 2),
  };
}

export function startSlowPush(ball: Sideways, pace: Pace): SlowPush {
  return {
    kind: 'push',
    pace,
    end: ball.translation,
    endSpeed: 0,
    ratio: 0,
    steadyRatio: 0,
    ballSpeed: 0,
    peak: 0,
    peakTranslation: ball.translation,
    fallingSeconds: 0,
  };
}

/**
 * The push one update later. While the ball stands still the far end moves so that the ratio rises steadily, then faster;
 * when the ball follows, the far end speeds up gently, to the top speed at most.
 */
export function nextSlowPush(push: SlowPush, ball: Sideways): SlowPush {
  const { pace } = push;
  const share = UPDATE_SECONDS / AVERAGING_SECONDS;
  const ballSpeed = push.ballSpeed + share * (ball.speed - push.ballSpeed);
  const rise =
    (pace.scale / RISE_SECONDS) * (1 + (push.ratio / (RISE_DOUBLES_AT * pace.scale)) ** 2);
  const ownSpeed = rise / SPRING_STIFFNESS;
  const allowed = Math.min(pace.topSpeed, push.endSpeed + pace.acceleration * UPDATE_SECONDS);
  const endSpeed = Math.max(ownSpeed, Math.min(allowed, ownSpeed + Math.max(0, ballSpeed)));
  const spring = { end: push.end + endSpeed * UPDATE_SECONDS, endSpeed };
  const ratio = springRatio(spring, ball, pace.loadAcceleration);
  const steadyRatio = push.steadyRatio + share * (ratio - push.steadyRatio);
  const isPeak = steadyRatio > push.peak;
  const peak = isPeak ? steadyRatio : push.peak;
  const peakTranslation = isPeak ? ball.translation : push.peakTranslation;
  const isLow = steadyRatio < peak * (1 - FALL_SHARE) - pace.scale * FALL_OF_SCALE;
  const isFurther = ball.translation > peakTranslation + FALL_TRAVEL;
  return {
    ...push,
    ...spring,
    ratio,
    steadyRatio,
    ballSpeed,
    peak,
    peakTranslation,
    fallingSeconds: isLow && isFurther ? push.fallingSeconds + UPDATE_SECONDS : 0,
  };
}

/** Whether the ball has yielded: it is pushed less than before, yet further out. */
export function hasYielded({ fallingSeconds }: SlowPush): boolean {
  return fallingSeconds >= FALL_SECONDS;
}

/** Whether the push has come to its limit with the ball still held. */
export function isHeld({ steadyRatio }: SlowPush): boolean {
  return steadyRatio >= 0.999 * LARGEST_RATIO;
}
