import { frictionAngle, type SphericalSocket } from '../geometry/index.ts';
import type { BallWorld, WorldMaker } from './ball-world.ts';
import {
  LARGEST_RATIO,
  LONGEST_ADVANCE,
  STEP_COUNT_SLACK,
  STEP_SECONDS,
  UPDATES_PER_STEP,
} from './constants.ts';
import { discOutline } from './disc-outline.ts';
import { createMatterWorld } from './matter-world.ts';
import { readWorld, type PushReading, type PushState } from './push-reading.ts';
import {
  nextDrag,
  nextHandForce,
  noForce,
  startDrag,
  type Drag,
  type HandForce,
} from './side-force.ts';
import {
  hasYielded,
  isHeld,
  nextSlowPush,
  paceOf,
  startSlowPush,
  type SlowPush,
} from './slow-push.ts';
import type { Polygon } from './socket-profile.ts';
import type { Sideways } from './spring.ts';
import { clamp } from './vector.ts';
import { planWorld } from './world-plan.ts';

export interface PushSceneOptions {
  readonly socket: SphericalSocket;
  /** mm, above 0 and at most the socket's radius of curvature */
  readonly ballRadius: number;
  /** N, above 0 */
  readonly compressiveLoad: number;
  /** Coulomb coefficient μ ≥ 0; 0 where it is left out. */
  readonly friction?: number;
}

/** The outlines that the engine collides, mm, in the frame of {@link PushReading}. */
export interface SceneOutlines {
  /** The socket's convex pieces, left to right. */
  readonly socket: readonly Polygon[];
  /** Blocks far outside the rim that stop the ball. */
  readonly stops: readonly Polygon[];
  /** The ball, relative to its centre. */
  readonly ball: Polygon;
}

/** A ball in a cup under load, to be pushed sideways. Each scene stands alone; any number can run side by side. */
export interface PushScene {
  /** Side force by hand, N, along +x or −x; limited to 20 compressive loads. Ends a drag and breaks off a push. */
  readonly setSideForce: (force: number) => void;
  /**
   * Draws the ball to a translation, mm, by a damped spring, whose force is then the side force; null lets go. Limited
   * to the translations between the stops. Breaks off a push.
   */
  readonly setDrag: (translation: number | null) => void;
  /** Seats the ball in the middle and pushes it slowly along +x until it yields or is held. */
  readonly startPush: () => void;
  /** N, above 0. A side force set by hand keeps its newtons. */
  readonly setCompressiveLoad: (force: number) => void;
  /** Coulomb coefficient, ≥ 0. */
  readonly setFriction: (coefficient: number) => void;
  /** Runs the whole steps that fit into this many more seconds, ≥ 0; of a longer gap only a quarter second counts. */
  readonly advance: (seconds: number) => void;
  /** Exactly one fixed step. */
  readonly step: () => void;
  /** Back to the start: ball in the middle, no side force, time 0; load and friction stay. */
  readonly reset: () => void;
  readonly read: () => PushReading;
  readonly outlines: SceneOutlines;
}

/**
 * A ball pressed into a cup and pushed sideways: one plane, rigid ball and socket, ball kept from rotating.
 *
 * @param createWorld engine to run it in
 * @throws RangeError for a load, friction, ball or argument outside the ranges named
 */
export function createPushScene(
  { socket, ballRadius, ...loading }: PushSceneOptions,
  createWorld: WorldMaker = createMatterWorld,
): PushScene {
  const plan = planWorld(socket, ballRadius);
  const { profile, loadAcceleration, damping } = plan;
  let compressiveLoad = soundLoad(loading.compressiveLoad);
  let friction = soundFriction(loading.friction ?? 0);
  let world: BallWorld;
  let side: HandForce | Drag | SlowPush;
  let push: PushState;
  let slip: SlowPush | null;
  let steps: number;
  let secondsDue: number;
  reset();

  function reset(): void {
    seat();
    push = 'idle';
    slip = null;
    steps = 0;
    secondsDue = 0;
  }

  /** Puts the ball in the middle: one update to find where it touches, one to press it home. */
  function seat(): void {
    world = createWorld(plan);
    side = noForce;
    world.update({ force: { x: 0, z: 0 }, compressiveLoad, friction, damping });
    update();
  }

  function sideways(): Sideways {
    const { position, velocity } = world.motion();
    return { translation: position.x, speed: velocity.x };
  }

  function update(): void {
    const ball = sideways();
    if (side.kind === 'hand')
      side = nextHandForce(side, paceOf(socket, friction, loadAcceleration).scale);
    else if (side.kind === 'drag') side = nextDrag(side, ball, loadAcceleration);
    else side = judged(nextSlowPush(side, ball), ball);
    world.update({
      force: { x: side.ratio * compressiveLoad, z: -compressiveLoad },
      compressiveLoad,
      friction,
      // On the spring nothing else may hold the ball back, or the spring's force would not be the side force.
      damping: side.kind === 'hand' ? damping : 0,
    });
  }

  /** Ends a push that has found its answer: a yielding ball is let go under the largest force, a held one is released. */
  function judged(pushed: SlowPush, ball: Sideways): SlowPush | HandForce {
    if (hasYielded(pushed) || Math.abs(ball.translation) >= socket.width / 2) {
      push = 'slipped';
      slip = pushed;
      return { kind: 'hand', target: pushed.peak, ratio: pushed.peak };
    }
    if (!isHeld(pushed)) return pushed;
    push = 'held';
    return { kind: 'hand', target: 0, ratio: pushed.ratio };
  }

  function breakOff(): void {
    if (push === 'pushing') push = 'idle';
  }

  function step(): void {
    for (let i = 0; i < UPDATES_PER_STEP; i += 1) update();
    steps += 1;
  }

  return {
    outlines: {
      socket: profile.pieces,
      stops: profile.stops,
      ball: discOutline(ballRadius, profile.facetAngles),
    },
    step,
    reset,
    setSideForce: (force) => {
      const target = clamp(finite('force', force) / compressiveLoad, -LARGEST_RATIO, LARGEST_RATIO);
      breakOff();
      side = { kind: 'hand', target, ratio: side.ratio };
    },
    setDrag: (translation) => {
      const limit = profile.stopTranslation;
      const target =
        translation === null ? null : clamp(finite('translation', translation), -limit, limit);
      breakOff();
      if (target === null) side = { kind: 'hand', target: 0, ratio: side.ratio };
      else side = side.kind === 'drag' ? { ...side, target } : startDrag(sideways(), target);
    },
    startPush: () => {
      seat();
      push = 'pushing';
      slip = null;
      side = startSlowPush(sideways(), paceOf(socket, friction, loadAcceleration));
    },
    setCompressiveLoad: (force) => {
      const before = compressiveLoad;
      compressiveLoad = soundLoad(force);
      if (side.kind !== 'hand') return;
      const scaled = (ratio: number): number =>
        clamp((ratio * before) / compressiveLoad, -LARGEST_RATIO, LARGEST_RATIO);
      side = { kind: 'hand', target: scaled(side.target), ratio: scaled(side.ratio) };
    },
    setFriction: (coefficient) => {
      friction = soundFriction(coefficient);
    },
    advance: (seconds) => {
      if (!(finite('seconds', seconds) >= 0)) {
        throw new RangeError(`seconds is ${seconds}; allowed: 0 or more`);
      }
      secondsDue += Math.min(seconds, LONGEST_ADVANCE);
      const due = Math.floor(secondsDue / STEP_SECONDS + STEP_COUNT_SLACK);
      secondsDue -= due * STEP_SECONDS;
      for (let i = 0; i < due; i += 1) step();
    },
    read: () => ({
      ...readWorld(world, ballRadius, socket.width / 2),
      time: steps * STEP_SECONDS,
      sideForce: side.ratio * compressiveLoad,
      compressiveLoad,
      ratio: side.ratio,
      springEnd: side.kind === 'hand' ? null : side.end,
      push,
      slipRatio: slip?.peak ?? null,
      slipTranslation: slip?.peakTranslation ?? null,
    }),
  };
}

function finite(name: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw new RangeError(`${name} is ${value}; allowed: any finite number`);
}

function soundLoad(force: number): number {
  if (Number.isFinite(force) && force > 0) return force;
  throw new RangeError(`compressiveLoad is ${force}; allowed: any finite value above 0 N`);
}

/** The geometry module holds the range of a friction coefficient. */
function soundFriction(coefficient: number): number {
  frictionAngle(coefficient);
  return coefficient;
}
