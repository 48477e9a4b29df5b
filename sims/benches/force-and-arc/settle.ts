import type { SphericalSocket } from '../../geometry/index.ts';
import type { ForceOnSocket } from '../../mechanics/index.ts';
import { LARGEST_RATIO } from '../../physics/constants.ts';
import { createPushScene } from '../../physics/push-scene.ts';

/** How a ball left to a steady force ended, or that it has not yet. */
export type Outcome = 'moving' | 'held' | 'over the rim' | 'undecided';

/** What the simulation measures. Lengths mm. */
export interface Settled {
  readonly outcome: Outcome;
  /** Along the side part of the force, from the centre line. */
  readonly translation: number;
  readonly climb: number;
  /** Simulated, s. */
  readonly time: number;
}

/** A ball in its cup, left to a force: a simulation to be run frame by frame or to its end. */
export interface Settling {
  /** Runs on by so many seconds. */
  readonly advance: (seconds: number) => void;
  readonly read: () => Settled;
}

export interface SettleQuestion {
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
  /** Must press the ball in: see {@link canSettle}. */
  readonly force: ForceOnSocket;
  readonly friction: number;
}

/** The side force is fully on by then, s. */
const FORCE_ON = 0.4;
/** The ball counts as held once it has moved less than this, mm, in this time, s. */
const STILL = 5e-4;
const STILL_FOR = 0.5;
/** A ball that still creeps after this, s, is left undecided: the force is within a hair of the limit. */
const LONGEST = 12;
const LOOK = 1 / 60;

/** Whether the simulation can run a force: one with a part that presses, and not too small a part. */
export function canSettle({ compressive, side }: ForceOnSocket): boolean {
  return compressive > 0 && side <= LARGEST_RATIO * compressive;
}

/**
 * Seats the ball in the middle, lets the side part of the force come on, and watches where the ball comes to rest.
 *
 * @throws RangeError for a force that {@link canSettle} refuses, and as `createPushScene`
 */
export function startSettling({ socket, ballRadius, force, friction }: SettleQuestion): Settling {
  if (!canSettle(force)) {
    throw new RangeError(
      `force has a compressive part of ${force.compressive} N and a side part of ${force.side} N; ` +
        `allowed: side up to ${LARGEST_RATIO} times compressive`,
    );
  }
  const scene = createPushScene({
    socket,
    ballRadius,
    compressiveLoad: force.compressive,
    friction,
  });
  scene.setSideForce(force.side);
  const rim = socket.width / 2;
  let outcome: Outcome = 'moving';
  let mark = { time: 0, translation: 0 };

  function look(): void {
    const { time, translation } = scene.read();
    if (outcome !== 'moving') return;
    if (translation >= rim) outcome = 'over the rim';
    else if (time < FORCE_ON || Math.abs(translation - mark.translation) > STILL) {
      mark = { time, translation };
      if (time > LONGEST) outcome = 'undecided';
    } else if (time - mark.time >= STILL_FOR) outcome = 'held';
  }

  return {
    advance: (seconds) => {
      for (let left = seconds; left > 1e-9; left -= LOOK) {
        scene.advance(Math.min(LOOK, left));
        look();
      }
    },
    read: () => {
      const { translation, climb, time } = scene.read();
      return { outcome, translation, climb, time };
    },
  };
}

/** Runs a ball to its end at once: the simulation as an instrument. */
export function settle(question: SettleQuestion): Settled {
  const settling = startSettling(question);
  while (settling.read().outcome === 'moving') settling.advance(LOOK);
  return settling.read();
}
