import type { Fading, SeatElement } from '../mechanics/index.ts';
import {
  LONGEST_ADVANCE,
  STEP_COUNT_SLACK,
  STEP_SECONDS,
  UPDATE_SECONDS,
  UPDATES_PER_STEP,
} from './constants.ts';
import {
  LEAST_SOCKET_DAMPING,
  LOAD_LAG,
  MOST_SOCKET_DAMPING,
  OVERTURNED_TURN,
  REST_OFFSET,
  REST_RATE,
  REST_SHARE,
  REST_STEPS,
  SLID_AWAY,
} from './rocking-constants.ts';
import { createGuide, type BallInSocket } from './rocking-guide.ts';
import type { Hollow } from './rocking-hollow.ts';
import { planeSprings, type RockingPlane } from './rocking-plane.ts';
import type { RimReading, RockingReading, RockingState } from './rocking-reading.ts';
import { fade, freshSprings, gapOf, pullOf, springAnswer } from './rocking-springs.ts';
import { createRockingWorld, springSize } from './rocking-world.ts';
import { clamp, type Vector } from './vector.ts';

export interface RockingSceneOptions {
  /** What the socket stands on and is held by, in the socket’s frame: x anterior, y superior, z out of the bone */
  readonly elements: readonly SeatElement[];
  readonly plane: RockingPlane;
  /** Its hollow in that plane, the deepest point at the origin of the frame */
  readonly hollow: Hollow;
  /** mm, above 0 and less than the hollow's radius of curvature */
  readonly ballRadius: number;
  /** N, above 0 */
  readonly compressiveLoad: number;
  /** How strengths fall with all the way slipped; they stay where it is left out. Taken off between two rim loads. */
  readonly fading?: Fading | undefined;
}

/** A ball under load on a socket that rests on springs. Each scene stands alone. */
export interface RockingScene {
  /** Where the ball presses: −1 at one rim, 0 in the middle, 1 at the other. The guide carries it there. Ends a rocking. */
  readonly setPlace: (place: number) => void;
  /** N, above 0; comes on softly */
  readonly setCompressiveLoad: (force: number) => void;
  /** Loads one rim and the other, at ± `place`, as often as told, and goes back to the first. */
  readonly rock: (cycles: number, place: number) => void;
  readonly advance: (seconds: number) => void;
  readonly step: () => void;
  readonly read: () => RockingReading;
}

/**
 * A socket rocked by the ball on it: one plane, rigid ball and socket, friction 0, springs of {@link planeSprings}.
 *
 * @throws RangeError for a load, ball or place outside the ranges named, or elements that the plane cannot stand for
 */
export function createRockingScene(options: RockingSceneOptions): RockingScene {
  const { elements, plane, hollow, ballRadius, fading } = options;
  if (!(ballRadius > 0 && ballRadius < hollow.curvatureRadius)) {
    throw new RangeError(
      `ballRadius is ${ballRadius}; allowed: above 0 and below ${hollow.curvatureRadius} mm`,
    );
  }
  const { springs, springOf, shareOf } = planeSprings(elements, plane);
  const reach = springs.reduce((most, { at }) => Math.max(most, Math.hypot(at.x, at.z)), 1);
  const world = createRockingWorld(hollow, ballRadius, springSize(springs));
  const guide = createGuide(hollow, ballRadius);
  const memory = freshSprings(springs);
  let asked = soundLoad(options.compressiveLoad);
  let load = asked;
  let side = 0;
  let steps = 0;
  let secondsDue = 0;
  let stillFor = 0;
  let ending: RockingState | null = null;
  let rocking: { readonly place: number; readonly left: number } | null = null;
  let rims: readonly RimReading[] = [];

  function update(): void {
    load += (asked - load) * Math.min(1, UPDATE_SECONDS / LOAD_LAG);
    side = guide.hold(ballInSocket(), load);
    const answer = springAnswer(memory, world.pose(), world.velocity());
    // As fast as the movements it makes would swing, so that the socket neither swings nor creeps.
    const swing = Math.sqrt(answer.stiffening / (world.motion() || Infinity));
    world.update({
      ball: { x: side, z: -load },
      socket: answer,
      compressiveLoad: load,
      damping: {
        along: dampingOf(Math.sqrt(answer.along / world.mass)),
        across: dampingOf(swing),
      },
    });
  }

  function ballInSocket(): BallInSocket {
    const contact = world.contact();
    return {
      x: world.ballInSocket().x,
      speed: world.ball().velocity.x,
      pushed: contact === null ? 0 : contact.normal.x * contact.normalForce,
    };
  }

  function step(): void {
    if (ending !== null) return;
    for (let i = 0; i < UPDATES_PER_STEP; i += 1) update();
    steps += 1;
    const { x, turn } = world.pose();
    if (Math.abs(turn) > OVERTURNED_TURN) ending = 'overturned';
    else if (Math.abs(x) > SLID_AWAY) ending = 'sliding';
    stillFor = isStill() ? stillFor + 1 : 0;
    if (isAtRest()) goOn();
  }

  function isStill(): boolean {
    const { x, z, turn } = world.velocity();
    const rate = Math.abs(x) + Math.abs(z) + Math.abs(turn) * reach;
    const isLoaded = Math.abs(asked - load) <= REST_SHARE * asked;
    return rate < REST_RATE && isLoaded && guide.offset(ballInSocket()) < REST_OFFSET;
  }

  function isAtRest(): boolean {
    return ending === null && stillFor >= REST_STEPS;
  }

  /** The next rim load of a rocking, once the one before is borne. */
  function goOn(): void {
    if (rocking === null) return;
    const { place, left } = rocking;
    const { liftOff, pressIn, slips } = bed();
    const slip = slips.reduce((most, value) => Math.max(most, value), 0);
    const { force, at } = loadOnSocket();
    rims = [...rims, { load: rims.length + 1, place, force, at, liftOff, pressIn, slip }];
    if (fading !== undefined) fade(memory, fading);
    rocking = left > 1 ? { place: -place, left: left - 1 } : null;
    guide.aim(rocking?.place ?? -place);
    stillFor = 0;
  }

  function loadOnSocket(): { readonly force: Vector; readonly at: Vector } {
    const contact = world.contact();
    if (contact === null) return { force: { x: 0, z: 0 }, at: { x: 0, z: 0 } };
    const { normal, normalForce, onSocket } = contact;
    return { force: { x: -normal.x * normalForce, z: -normal.z * normalForce }, at: onSocket };
  }

  function bed(): Pick<
    RockingReading,
    'liftOff' | 'pressIn' | 'gaps' | 'forces' | 'slips' | 'crushed'
  > {
    const pose = world.pose();
    const springGaps = springs.map((spring) => gapOf(spring, pose));
    const gaps = springOf.map((i) => springGaps[i] ?? 0);
    const bearing = gaps.filter((_, i) => (elements[i]?.normal[2] ?? 0) > 0);
    return {
      gaps,
      forces: springOf.map((i, k) => 0 - pullOf(memory, i, springGaps[i] ?? 0) * (shareOf[k] ?? 0)),
      slips: springOf.map((i) => memory.slips[i] ?? 0),
      crushed: springOf.map((i) => 0 - (memory.homes[i] ?? 0)),
      liftOff: bearing.reduce((most, gap) => Math.max(most, gap), 0),
      pressIn: bearing.reduce((most, gap) => Math.max(most, -gap), 0),
    };
  }

  return {
    setPlace: (place) => {
      rocking = null;
      stillFor = 0;
      guide.aim(soundPlace(place));
    },
    setCompressiveLoad: (force) => {
      asked = soundLoad(force);
      stillFor = 0;
    },
    rock: (cycles, place) => {
      if (!Number.isInteger(cycles) || cycles < 1) {
        throw new RangeError(`cycles is ${cycles}; allowed: 1, 2, 3 …`);
      }
      rocking = { place: soundPlace(place), left: 2 * cycles };
      stillFor = 0;
      guide.aim(place);
    },
    step,
    advance: (seconds) => {
      if (!(Number.isFinite(seconds) && seconds >= 0)) {
        throw new RangeError(`seconds is ${seconds}; allowed: 0 or more`);
      }
      secondsDue += Math.min(seconds, LONGEST_ADVANCE);
      const due = Math.floor(secondsDue / STEP_SECONDS + STEP_COUNT_SLACK);
      secondsDue -= due * STEP_SECONDS;
      for (let i = 0; i < due; i += 1) step();
    },
    read: () => {
      const { x, z } = world.ballInSocket();
      return {
        time: steps * STEP_SECONDS,
        state: ending ?? (isAtRest() && rocking === null ? 'at rest' : 'moving'),
        pose: world.pose(),
        ball: world.ball().position,
        contactAngle: Math.atan2(x, hollow.curvatureRadius - z),
        contact: world.contact(),
        loadOnSocket: loadOnSocket(),
        compressiveLoad: load,
        sideForce: side,
        ...bed(),
        rims,
        isRocking: rocking !== null,
      };
    },
  };
}

/** Rate, 1/s, that takes the swing out of a movement of this angular frequency. */
function dampingOf(frequency: number): number {
  return clamp(2 * frequency, LEAST_SOCKET_DAMPING, MOST_SOCKET_DAMPING);
}

function soundLoad(force: number): number {
  if (Number.isFinite(force) && force > 0) return force;
  throw new RangeError(`compressiveLoad is ${force}; allowed: any finite value above 0 N`);
}

function soundPlace(place: number): number {
  if (place >= -1 && place <= 1) return place;
  throw new RangeError(`place is ${place}; allowed: −1 to 1`);
}
