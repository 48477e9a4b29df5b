import { scaleLinear } from 'd3-scale';
import type { Plot } from '../../figures/plot.ts';
import { createView, type View } from '../../figures/view.ts';

/** Room for a picture, in drawing units. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What a picture for the stage shows to either side of the middle, mm. */
const SIDE = 30;
/** What is seen below the hollow’s deepest point, mm: plastic, pegs and some bone. */
const BELOW = 25;

/** A socket in a box: as large as its width allows, the ball cut off at the top. Units are those of the box itself. */
export function stageView({ width, height }: Box): View {
  const scale = width / (2 * SIDE);
  return createView({
    width,
    height,
    scale,
    origin: { x: width / 2, y: height - BELOW * scale },
  });
}

/** Gaps, mm, against the loads of a rocking; room is left for ticks at the left and below. */
export function stagePlot({ left, top, width, height }: Box, loads: number, most: number): Plot {
  const [right, bottom] = [left + width, top + height];
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    x: scaleLinear([0.5, loads + 0.5], [left, right]),
    y: scaleLinear([0, most], [bottom, top]),
  };
}
