import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';

/** Two linear scales and the room they fill. */
export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Room for the lettering round a plot, in multiples of the lettering's size. */
const MARGIN = { left: 2.9, right: 1, top: 1.9, bottom: 3.1 } as const;

/** A plot of the given outer size; the domains are kept as they are given. */
export function createPlot(frame: {
  readonly width: number;
  readonly height: number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
  readonly size?: number;
}): Plot {
  const { width, height, size = 15 } = frame;
  const left = MARGIN.left * size;
  const right = width - MARGIN.right * size;
  const top = MARGIN.top * size;
  const bottom = height - MARGIN.bottom * size;
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    x: scaleLinear([...frame.x], [left, right]),
    y: scaleLinear([...frame.y], [bottom, top]),
  };
}

/** A row of numbers as a curve or as the area under it. */
export type PlotPoint = readonly [x: number, y: number];

const DIGITS = 2;

export function curvePath({ x, y }: Plot, points: readonly PlotPoint[]): string {
  const draw = line<PlotPoint>(
    ([across]) => x(across),
    ([, up]) => y(up),
  ).digits(DIGITS);
  return draw(points) ?? '';
}

export function areaPath({ x, y }: Plot, points: readonly PlotPoint[]): string {
  const draw = area<PlotPoint>(
    ([across]) => x(across),
    y(0),
    ([, up]) => y(up),
  ).digits(DIGITS);
  return draw(points) ?? '';
}
