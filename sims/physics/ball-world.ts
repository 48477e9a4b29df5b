import type { Vector } from './vector.ts';
import type { WorldPlan } from './world-plan.ts';

/** One place where the socket presses on the ball. */
export interface BearingContact {
  /** Unit normal pointing into the ball. */
  readonly normal: Vector;
  /** Along the normal, N, as the engine found it. */
  readonly normalForce: number;
  /** Along the surface, N, positive outward along +x. */
  readonly frictionForce: number;
}

/** The ball's centre, mm, and its velocity, mm/s. */
export interface BallMotion {
  readonly position: Vector;
  readonly velocity: Vector;
}

/** What acts on the ball during one update, besides the contacts. */
export interface Action {
  /** All applied forces together, N. */
  readonly force: Vector;
  /** N; the ball's mass goes with it. */
  readonly compressiveLoad: number;
  /** Coulomb coefficient at the contacts. */
  readonly friction: number;
  /** Rate at which motion dies away by itself, 1/s. */
  readonly damping: number;
}

/** A ball that cannot rotate and a fixed socket in a physics engine. */
export interface BallWorld {
  /** Moves on by one update. */
  readonly update: (action: Action) => void;
  readonly motion: () => BallMotion;
  readonly contacts: () => readonly BearingContact[];
}

export type WorldMaker = (plan: WorldPlan) => BallWorld;
