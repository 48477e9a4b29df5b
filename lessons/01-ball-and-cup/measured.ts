import { socketFromDepth } from '../../sims/geometry/index.ts';
import { createPushScene } from '../../sims/physics/push-scene.ts';
import { ballRadius, press, wideCup, width } from './cups.ts';

/** One push of the simulation, run while the page is built. */
export interface MeasuredSlip {
  readonly width: number;
  readonly depth: number;
  /** Side force over press as the ball slipped. */
  readonly ratio: number;
}

const MOST_STEPS = 20_000;

/** Pushes the lesson's ball out of a cup and returns the ratio at which it slipped. */
function slipOf(w: number, depth: number): MeasuredSlip {
  const scene = createPushScene({
    socket: socketFromDepth({ depth, width: w }),
    ballRadius,
    compressiveLoad: press,
    friction: 0,
  });
  scene.startPush();
  for (let i = 0; i < MOST_STEPS && scene.read().push === 'pushing'; i += 1) scene.step();
  const { slipRatio } = scene.read();
  if (slipRatio === null) throw new Error(`the ball did not slip: ${w} mm wide, ${depth} mm deep`);
  return { width: w, depth, ratio: slipRatio };
}

export const measuredSlips: readonly MeasuredSlip[] = [
  ...[1, 2, 3, 4].map((depth) => slipOf(width, depth)),
  ...[2, 4, 6].map((depth) => slipOf(wideCup.width, depth)),
];
