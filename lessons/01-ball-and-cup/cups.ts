import {
  balanceStabilityAngle,
  peakStabilityRatio,
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../sims/geometry/index.ts';
import { newtons } from '../../sims/shared/format.ts';
import { factValue } from '../fact-value.ts';

/** The lesson's cup and ball: near the anatomy, round numbers. */
export const ballRadius = 24;
export const width = 28;
export const cup = socketFromDepth({ depth: 4, width });
export const press = 50;

/** The side force at which the lesson's cup lets go, N. */
export const slipForce = press * peakStabilityRatio(cup);

/** What a visitor may predict: shares of the press that sound likely, and the computed force. */
export const slipOptions = [
  { id: 'hardly', value: press * 0.1, why: 'it rolls off' },
  { id: 'a-third', value: press / 3, why: 'a third of the press' },
  { id: 'computed', value: slipForce, why: 'more than half the press' },
].map(({ id, value, why }) => ({ id, value, text: `About ${newtons(value)}: ${why}` }));

/** By what share friction raises the ratio of the lesson's cup. */
export function frictionGain(factId: string): number {
  return peakStabilityRatio(cup, factValue(factId)) / peakStabilityRatio(cup) - 1;
}

/** What a mass of this many kilograms weighs, N. */
const STANDARD_GRAVITY = 9.80665;
export const pressAsMass = press / STANDARD_GRAVITY;

/** One row of the table of depths. */
export interface DepthRow {
  readonly socket: SphericalSocket;
  readonly ratio: number;
  readonly angle: number;
}

export const depthRows: readonly DepthRow[] = [0, 1, 2, 3, 4].map((depth) => {
  const socket = socketFromDepth({ depth, width });
  return { socket, ratio: peakStabilityRatio(socket), angle: balanceStabilityAngle(socket) };
});

/** The deepest hollow of this width that the ball still reaches the bottom of: one that fits it exactly. */
export const fittingCup = sphericalSocket({ curvatureRadius: ballRadius, width });

/** Same depth in a face as wide as the socket is high. */
export const wideCup = socketFromDepth({ depth: cup.depth, width: 38 });

const labrumRadius = factValue('labral-socket-radius');
const labrumDepth = factValue('labral-socket-depth');

/** The labrum's own shape, as measured: its radius and depth; the width follows. */
export const labrumCup = sphericalSocket({
  curvatureRadius: labrumRadius,
  width: 2 * Math.sqrt(labrumRadius ** 2 - (labrumRadius - labrumDepth) ** 2),
});
