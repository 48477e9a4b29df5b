import { createPlot, type Plot } from '../../figures/plot.ts';
import { BODY } from '../../figures/section.ts';
import { createView, type View } from '../../figures/view.ts';
import type { DesignName } from './settings.ts';

/** Where the two sockets and the plot stand. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering */
  readonly size: number;
  readonly panels: Readonly<Record<DesignName, Panel>>;
  readonly plot: { readonly top: number; readonly plot: Plot };
}

/** One socket’s part of the picture: its own drawing units begin at left and top. */
export interface Panel {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** Height of the lettering above the picture */
  readonly head: number;
  readonly view: View;
}

export const LEAST_WIDTH = 300;
const WIDE = 620;
/** What a panel holds, mm: to either side of the middle, above the deepest point of the hollow, and below it. */
const REACH = { side: 33, above: 31, below: 36 } as const;
/** Room beside the back for its dimensions: the lines, mm, and their lettering in multiples of its size. */
const BESIDE = 4;
const LETTERS = 4.1;
/** Lines of lettering above a panel. */
const HEAD = 1.8;
/** Between the two panels. */
const GUTTER = 12;
const PLOT_SHARE = { wide: 0.27, narrow: 0.66 } as const;
/** µm that a plot without gaps still shows. */
const LEAST_TOP = 50;
const ROOM = 1.15;

/**
 * @param half half the size of the back in the plane, mm: a larger one is drawn smaller
 * @param largest gap to plot, mm
 */
export function layoutFor(width: number, half: number, loads: number, largest: number): Layout {
  const isWide = width >= WIDE;
  const size = isWide ? 15 : 13;
  const panelWidth = isWide ? (width - GUTTER) / 2 : width;
  const panel = (left: number, top: number): Panel => panelFor(panelWidth, half, size, left, top);
  const { height } = panel(0, 0);
  const below = isWide ? height : 2 * height + size;
  const plotHeight = Math.round(width * (isWide ? PLOT_SHARE.wide : PLOT_SHARE.narrow));
  return {
    width,
    height: below + size + plotHeight,
    size,
    panels: { a: panel(0, 0), b: isWide ? panel(panelWidth + GUTTER, 0) : panel(0, height + size) },
    plot: {
      top: below + size,
      plot: createPlot({
        width,
        height: plotHeight,
        x: [0, Math.max(1, loads / 2)],
        y: [0, Math.max(LEAST_TOP, largest * 1000 * ROOM)],
        size,
      }),
    },
  };
}

/** One socket’s part, as wide as it is told to be; a larger back is drawn smaller. */
export function panelFor(width: number, half: number, size: number, left = 0, top = 0): Panel {
  const lettering = (2 * LETTERS * size) / width;
  const side = Math.max(REACH.side, (half + BESIDE) / (1 - lettering));
  const scale = width / (2 * side);
  const head = HEAD * size;
  const height = Math.round(head + (REACH.above + REACH.below) * scale);
  const origin = { x: width / 2, y: head + REACH.above * scale };
  return { left, top, width, height, head, view: createView({ width, height, scale, origin }) };
}

/** Level of the back of the socket, mm. */
export const BACK = -BODY.thickness;
