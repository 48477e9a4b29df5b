import { createView, type Point, type View } from '../../figures/view.ts';
import type { Rose } from '../round-the-rim/layout.ts';
import { roundStep } from './bands.ts';
import { BACK } from './seat.ts';
import type { Design, Ground } from './settings.ts';
import type { RoseRow } from './rose.ts';

/** A rectangle of the picture. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering, and of numbers and asides */
  readonly size: number;
  readonly small: number;
  /** Plan in the middle, and lift-off in µm from its base circle outward */
  readonly rose: Rose;
  readonly section: Box & { readonly view: View };
  readonly legend: Box;
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 280;
export const MICROMETRES = 1000;
const BESIDE = 640;
const SMALL = 420;
const ROSE_SHARE = 0.6;
const WIDEST_ROSE = 620;
const BASE_SHARE = 0.75;
/** The usual back, half its height, mm: smaller ones are drawn at the same scale. */
const USUAL_BACK = 19;
/** Room in the section beside the back, over the face for the load’s arrow, and under the deepest peg, mm. */
const BESIDE_BACK = 7.5;
const OVER_FACE = 21;
const UNDER_PEG = 4;
const LEAST_DEPTH = 12;

export function layoutFor(
  ground: Pick<Ground, 'height' | 'width'>,
  design: Design,
  rose: readonly RoseRow[],
  width: number,
): Layout {
  const isSmall = width < SMALL;
  const size = isSmall ? 13 : 14.5;
  const small = isSmall ? 12 : 13;
  const line = Math.round(size * 1.9);
  const isBeside = width >= BESIDE;
  const side = Math.round(Math.min(isBeside ? width * ROSE_SHARE : width, WIDEST_ROSE));
  const centre = { x: isBeside ? side / 2 : width / 2, y: line + side / 2 };
  const foot = line + side + size * 1.6;
  const panel = isBeside
    ? { left: side + size, right: width - 4, top: 0 }
    : { left: 4, right: width - 4, top: foot + size };
  const half = Math.max(ground.height, ground.width) / 2 + BESIDE_BACK;
  const deep = depthOf(design);
  const across = Math.min(panel.right - panel.left, 520);
  const legendHeight = size * 8.4;
  const most = isBeside ? foot - panel.top - line - legendHeight : Infinity;
  const scale = Math.min(across / (2 * half), most / (OVER_FACE - BACK + deep + UNDER_PEG));
  const top = panel.top + line;
  const middle = (panel.left + panel.right) / 2;
  const bottom = top + (OVER_FACE - BACK + deep + UNDER_PEG) * scale + size * 3.4;
  const legendTop = isBeside ? Math.max(bottom + size, foot - legendHeight) : bottom + size;
  const height = Math.ceil(Math.max(foot, legendTop + legendHeight));
  return {
    width,
    height,
    size,
    small,
    rose: roseFor(ground, rose, centre, side / 2 - 2, size),
    section: {
      left: panel.left,
      right: panel.right,
      top: panel.top,
      bottom,
      view: createView({
        width,
        height,
        scale,
        origin: { x: middle, y: top + OVER_FACE * scale },
      }),
    },
    legend: {
      left: panel.left,
      right: panel.right,
      top: legendTop,
      bottom: legendTop + legendHeight,
    },
  };
}

/** How deep the longest peg or keel goes, mm. */
export function depthOf({ pegs, keel }: Design): number {
  return Math.max(LEAST_DEPTH, keel?.depth ?? 0, ...pegs.map(({ length }) => length));
}

function roseFor(
  ground: Pick<Ground, 'height' | 'width'>,
  rows: readonly RoseRow[],
  centre: Point,
  outer: number,
  size: number,
): Rose {
  const inner = outer - size * 1.75;
  const base = inner * BASE_SHARE;
  const scale = (base - size * 1.55) / Math.max(USUAL_BACK, ground.height / 2);
  return {
    centre,
    outer,
    inner,
    base,
    ...scaleOf(rows),
    view: createView({ width: 2 * outer, height: 2 * outer, scale, origin: centre }),
  };
}

/** The same rose with its scale set for other lift-offs; all else, and what follows from it, stays as it is. */
export const scaledRose = (rose: Rose, rows: readonly RoseRow[]): Rose => ({
  ...rose,
  ...scaleOf(rows),
});

function scaleOf(rows: readonly RoseRow[]): ReturnType<typeof scaleFor> {
  const most = rows.reduce((greatest, { liftOff }) => (liftOff > greatest ? liftOff : greatest), 0);
  return scaleFor(most * MICROMETRES);
}

/** End of the rose’s scale and the distance of its rings, µm: at most four rings, never less than 20 µm. */
export function scaleFor(most: number): { readonly top: number; readonly step: number } {
  const wanted = Math.max(20, most * 1.02);
  const rough = roundStep(wanted);
  const step = wanted / rough > 4 ? nextStep(rough) : rough;
  return { top: Number((Math.ceil(wanted / step - 1e-9) * step).toPrecision(6)), step };
}

function nextStep(step: number): number {
  const lead = Number(step.toExponential(0).split('e')[0]);
  return Number((lead === 2 ? step * 2.5 : step * 2).toPrecision(3));
}
