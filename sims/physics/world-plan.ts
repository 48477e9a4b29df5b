import { radialMismatch, type SphericalSocket } from '../geometry/index.ts';
import {
  LEAST_DAMPING,
  LEAST_LOAD_ACCELERATION,
  LEAST_SLOP,
  MOST_DAMPING,
  MOST_LOAD_ACCELERATION,
  MOST_SLOP,
  MOST_SWING,
  SLOP_LENGTH,
  SLOP_OF_MISMATCH,
  UPDATE_SECONDS,
} from './constants.ts';
import { socketProfile, type SocketProfile } from './socket-profile.ts';
import { clamp } from './vector.ts';

/** What a world is built from: the shapes, and the numbers that suit them. */
export interface WorldPlan {
  readonly profile: SocketProfile;
  /** mm */
  readonly ballRadius: number;
  /** Height of the ball's centre over the deepest point when it rests in the middle, mm. */
  readonly startHeight: number;
  /** Acceleration that the compressive load alone gives the ball, mm/s²: what its mass is chosen by. */
  readonly loadAcceleration: number;
  /** Damping of free motion, 1/s. */
  readonly damping: number;
  /** Penetration left at the contacts, mm. */
  readonly slop: number;
}

/** @throws RangeError where the ball is not a finite positive radius or is larger than the socket's radius of curvature */
export function planWorld(socket: SphericalSocket, ballRadius: number): WorldPlan {
  const mismatch = radialMismatch(socket, ballRadius);
  const profile = socketProfile(socket, ballRadius);
  const loadAcceleration = accelerationFor(socket.halfArc, mismatch);
  return {
    profile,
    ballRadius,
    startHeight: ballRadius - sinkOf(profile, mismatch),
    loadAcceleration,
    // A ball of mismatch m swings in its hollow at √(A/m).
    damping: clamp(4 * Math.sqrt(loadAcceleration / mismatch), LEAST_DAMPING, MOST_DAMPING),
    slop: slopFor(profile, mismatch),
  };
}

/**
 * As much acceleration as the update can follow. Where the hollow is inclined by β, the ball swings about a place of rest
 * at ω = √(A / (m cos³β)). A conforming ball has no such place.
 */
function accelerationFor(halfArc: number, mismatch: number): number {
  if (mismatch === 0) return MOST_LOAD_ACCELERATION;
  const most = mismatch * Math.cos(halfArc) ** 3 * (MOST_SWING / UPDATE_SECONDS) ** 2;
  return clamp(most, LEAST_LOAD_ACCELERATION, MOST_LOAD_ACCELERATION);
}

/** Between the two innermost facets the ball stands lower than on the true arc, by m(1/cos(spacing/2) − 1), mm. */
function sinkOf({ facetSpacing }: SocketProfile, mismatch: number): number {
  if (facetSpacing === 0) return 0;
  return (mismatch * 2 * Math.sin(facetSpacing / 4) ** 2) / Math.cos(facetSpacing / 2);
}

function slopFor({ facetSpacing }: SocketProfile, mismatch: number): number {
  if (facetSpacing === 0) return MOST_SLOP;
  const length = Math.max(SLOP_LENGTH, mismatch * SLOP_OF_MISMATCH);
  return clamp(length * facetSpacing ** 2, LEAST_SLOP, MOST_SLOP);
}
