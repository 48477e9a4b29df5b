import { socketFromDepth } from '../../sims/geometry/index.ts';
import { measureSlip } from '../../sims/physics/measure-slip.ts';
import { ballRadius, press, wideCup, width } from './cups.ts';

/** One push of the simulation, run while the page is built. */
export interface MeasuredSlip {
  readonly width: number;
  readonly depth: number;
  /** Side force over press as the ball slipped. */
  readonly ratio: number;
}

function slipOf(w: number, depth: number): MeasuredSlip {
  const socket = socketFromDepth({ depth, width: w });
  const ratio = measureSlip({ socket, ballRadius, compressiveLoad: press });
  if (ratio === null) throw new Error(`the ball was held: ${w} mm wide, ${depth} mm deep`);
  return { width: w, depth, ratio };
}

export const measuredSlips: readonly MeasuredSlip[] = [
  ...[1, 2, 3, 4].map((depth) => slipOf(width, depth)),
  ...[2, 4, 6].map((depth) => slipOf(wideCup.width, depth)),
];
