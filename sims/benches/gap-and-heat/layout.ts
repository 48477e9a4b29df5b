import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { createView, type View } from '../../figures/view.ts';
import type { CementHeat } from '../../mechanics/index.ts';
import { stemOf } from './cut-figure.ts';
import { halfPolymer } from './heat.ts';
import { DENSITY, thicknessOf, type Mantles } from './mantle.ts';
import type { PublishedHeat } from './published.ts';
import { holdNames, ranges, type HoldName } from './settings.ts';

/** A rectangle of the picture, CSS pixels. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A plot: its title's baseline, its room, its scales. */
export interface PlotRoom {
  readonly title: number;
  readonly box: Box;
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering */
  readonly size: number;
  /** Cuts through a peg and through the keel, from the middle of the hole at the level of the bone’s surface, mm */
  readonly cuts: Readonly<Record<HoldName, { readonly box: Box; readonly view: View }>>;
  /** cm³ upward */
  readonly volumes: Omit<PlotRoom, 'x'>;
  /** °C over mm from the bone’s surface */
  readonly depth: PlotRoom;
  /** °C over minutes */
  readonly time: PlotRoom;
}

export const LEAST_WIDTH = 300;
const WIDE = 620;
const GUTTER = 14;
/** What a cut shows, mm: to either side of its middle, above the bone, below its surface. */
const REACH = { side: 12, above: 3.5, below: 18 } as const;
/** Bone under the deepest hole, mm. */
const UNDER_HOLE = 4.5;
/** Bone in the plot over depth, mm. */
const BONE_SHOWN = 12;
/** Room in the lettering's size: for a title, left of a plot and under it. */
const TITLE = 1.7;
const LEFT = 2.9;
const UNDER = 3.2;
const FOOT = 1.7;
const PLOT_HEIGHT = { wide: 0.4, narrow: 0.74 } as const;

export function layoutFor(
  mantles: Mantles,
  heats: Readonly<Record<HoldName, CementHeat>>,
  published: PublishedHeat | null,
  width: number,
): Layout {
  const isWide = width >= WIDE;
  const size = isWide ? 15 : 13;
  const line = TITLE * size;
  const column = isWide ? (width - 2 * GUTTER) / 3 : (width - GUTTER) / 2;
  const scale = column / (2 * REACH.side);
  const { setting } = mantles;
  const deepest = Math.max(...holdNames.map((name) => stemOf(setting, name).length));
  const below = Math.max(REACH.below, deepest + thicknessOf(setting) + UNDER_HOLE);
  const cutHeight = (REACH.above + below) * scale;
  const cutBottom = Math.round(line + cutHeight);
  const cut = (left: number) => ({
    box: { left, right: left + column, top: line, bottom: cutBottom },
    view: createView({
      width,
      height: cutBottom,
      scale,
      origin: { x: left + column / 2, y: line + REACH.above * scale },
    }),
  });

  const foot = FOOT * size;
  const volumeTop = isWide ? 0 : cutBottom + foot + size * 0.7;
  const volumeLeft = isWide ? 2 * (column + GUTTER) : 0;
  const volumeBox = {
    left: volumeLeft + LEFT * size,
    right: width - size * 0.4,
    top: volumeTop + line + size * 1.6,
    bottom: isWide ? cutBottom + foot - UNDER * size : volumeTop + line + size * 15,
  };
  const firstBottom = isWide ? cutBottom + foot : volumeBox.bottom + UNDER * size;

  const plotHeight = Math.round(width * (isWide ? PLOT_HEIGHT.wide : PLOT_HEIGHT.narrow));
  const plotWidth = isWide ? (width - GUTTER) / 2 : width;
  const plot = (left: number, top: number): Pick<PlotRoom, 'title' | 'box'> => ({
    title: top + size,
    box: {
      left: left + LEFT * size,
      right: left + plotWidth - size,
      top: top + line + size * 0.8,
      bottom: top + plotHeight - UNDER * size,
    },
  });
  const depth = plot(0, firstBottom + line);
  const time = isWide
    ? plot(plotWidth + GUTTER, firstBottom + line)
    : plot(0, firstBottom + line + plotHeight);
  const degrees = degreeDomain(mantles, heats);
  const up = ({ box }: Pick<PlotRoom, 'box'>) => scaleLinear(degrees, [box.bottom, box.top]);
  const across = ({ box }: Pick<PlotRoom, 'box'>, from: number, to: number) =>
    scaleLinear([from, to], [box.left, box.right]);
  const inside = halfPolymer(setting, setting.measured) + thicknessOf(setting);
  return {
    width,
    height: Math.ceil(time.box.bottom + UNDER * size),
    size,
    cuts: { pegs: cut(0), keel: cut(column + GUTTER) },
    volumes: {
      title: volumeTop + size,
      box: volumeBox,
      y: scaleLinear([0, volumeTopOf(mantles, published)], [volumeBox.bottom, volumeBox.top]),
    },
    depth: { ...depth, x: across(depth, -inside, BONE_SHOWN), y: up(depth) },
    time: { ...time, x: across(time, 0, ranges.time.max / 60), y: up(time) },
  };
}

/** The lowest temperature at the start to above the hottest cement; whole tens, so that it seldom changes. */
function degreeDomain(
  { setting }: Mantles,
  heats: Readonly<Record<HoldName, CementHeat>>,
): readonly [number, number] {
  const hottest = Math.max(...holdNames.map((name) => heats[name].peakInCement));
  return [10 * Math.floor(setting.start / 10), Math.max(80, 20 * Math.ceil((hottest + 2) / 20))];
}

/** cm³ at the upper end of the scale. */
function volumeTopOf({ pegs, keel }: Mantles, published: PublishedHeat | null): number {
  const weighed = published === null ? 0 : published.weight.high / DENSITY / 1000;
  const most = Math.max(weighed, pegs.cement / 1000, keel.cement / 1000, 2);
  return 2 * Math.ceil((most * 1.05) / 2);
}
