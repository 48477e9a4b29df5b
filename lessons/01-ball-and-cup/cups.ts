import {
  balanceStabilityAngle,
  peakStabilityRatio,
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../sims/geometry/index.ts';

/** The lesson's cup and ball: near the anatomy, round numbers. */
export const ballRadius = 24;
export const width = 28;
export const cup = socketFromDepth({ depth: 4, width });
export const press = 50;

/** The side force at which the lesson's cup lets go, N. */
export const slipForce = press * peakStabilityRatio(cup);

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

/** The labrum's own shape, as measured: radius 25 mm, 7.1 mm deep; its width follows. */
export const labrumCup = sphericalSocket({
  curvatureRadius: 25,
  width: 2 * Math.sqrt(25 ** 2 - (25 - 7.1) ** 2),
});
