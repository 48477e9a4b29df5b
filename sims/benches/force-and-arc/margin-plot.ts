import { createPlot, type Plot } from '../../figures/plot.ts';
import type { Layout } from './layout.ts';
import { marginOverTilt } from './margin.ts';
import { inDegrees, type ForceReading } from './reading.ts';
import { tiltRange } from './settings.ts';

const ROWS = 121;
const STEP = 10;

export interface MarginPlot {
  readonly plot: Plot;
  readonly points: readonly (readonly [tilt: number, margin: number])[];
  readonly now: readonly [tilt: number, margin: number] | null;
}

/** Margin against the turn of the socket under the present force, degrees. */
export function marginPlot(reading: ForceReading, { plot: box, size }: Layout): MarginPlot {
  const points = marginOverTilt(reading, [tiltRange.min, tiltRange.max], ROWS).flatMap(
    ({ tilt, reading: { margin } }) =>
      margin === null ? [] : [[tilt, inDegrees(margin)] as const],
  );
  const margins = points.map(([, margin]) => margin);
  const highest = Math.max(STEP, ...margins);
  const lowest = Math.min(-STEP, ...margins);
  return {
    plot: createPlot({
      width: box.width,
      height: box.height,
      x: [tiltRange.min, tiltRange.max],
      y: [Math.floor(lowest / STEP) * STEP, Math.ceil(highest / STEP) * STEP],
      size,
    }),
    points,
    now: reading.margin === null ? null : [inDegrees(reading.tilt), inDegrees(reading.margin)],
  };
}

/** The tilt, degrees, under a place across the picture. */
export function plottedTilt({ plot: box }: Layout, { plot }: MarginPlot, x: number): number {
  return plot.x.invert(x - box.left);
}
