import { UPDATE_SECONDS } from './constants.ts';
import {
  BALL_ACCELERATION,
  CROSSING_TIME,
  GUIDE_CATCH_UP,
  GUIDE_DAMPING_RATIO,
  GUIDE_LAG,
  GUIDE_STIFFNESS,
} from './rocking-constants.ts';
import type { Hollow } from './rocking-hollow.ts';
import { clamp } from './vector.ts';

/** What holds the ball sideways, and leaves it free to rise and sink. */
export interface Guide {
  /** Carries the ball to where it presses at this share of the way to the rim, −1 to 1. */
  readonly aim: (place: number) => void;
  /** Moves on by one update; the side force on the ball, N. */
  readonly hold: (ball: BallInSocket, compressiveLoad: number) => number;
  /** How far the ball is from where it is meant to end, mm. */
  readonly offset: (ball: BallInSocket) => number;
}

/** The ball’s centre sideways in the socket’s frame, mm, its speed, mm/s, and the socket’s push on it along x, N. */
export interface BallInSocket {
  readonly x: number;
  readonly speed: number;
  readonly pushed: number;
}

/**
 * A guide in the socket’s frame: a damped spring between the ball and the place where it should be, and a force that
 * meets what the socket pushes back with, as it is measured. Where the ball should be follows from the shape alone.
 */
export function createGuide({ curvatureRadius, halfArc }: Hollow, ballRadius: number): Guide {
  const wayToRim = (curvatureRadius - ballRadius) * Math.sin(halfArc);
  const damping = 2 * GUIDE_DAMPING_RATIO * Math.sqrt(GUIDE_STIFFNESS / BALL_ACCELERATION);
  let target = 0;
  let place = 0;
  let pace = 0;
  /** N */
  let met = 0;
  return {
    aim: (next) => {
      target = next;
    },
    hold: ({ x, speed, pushed }, load) => {
      const wanted = clamp((target - place) / GUIDE_LAG, -2 / CROSSING_TIME, 2 / CROSSING_TIME);
      pace += (wanted - pace) * Math.min(1, (2 * UPDATE_SECONDS) / GUIDE_LAG);
      place = clamp(place + pace * UPDATE_SECONDS, -1, 1);
      const behind = place * wayToRim - x;
      met -= (met + pushed) * (UPDATE_SECONDS / GUIDE_CATCH_UP);
      return met + load * (GUIDE_STIFFNESS * behind + damping * (pace * wayToRim - speed));
    },
    offset: ({ x }) => Math.abs(target * wayToRim - x),
  };
}
