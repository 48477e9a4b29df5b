import { createView, type View } from '../../figures/view.ts';
import type { Cup } from '../shared/cup-setting.ts';

/** A horizontal strip of the picture. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
}

/**
 * How the three panels stand: one above the other with words beside the plots (columned) or over them (stacked), or on
 * a stage, wider than high, the plots beside the section.
 */
export type Arrangement = 'columned' | 'stacked' | 'stage';

/** Where everything stands, in CSS pixels of the picture. */
export interface Layout {
  readonly arrangement: Arrangement;
  readonly width: number;
  readonly height: number;
  /** Size of the lettering, and of what must be read first. */
  readonly size: number;
  readonly keySize: number;
  /** How much heavier than on a page the lines are. */
  readonly weight: number;
  /** Millimetres of the section. */
  readonly view: View;
  readonly section: Band & { readonly right: number };
  readonly path: Band;
  readonly ratio: Band;
  /** Left and right end of both plots; off the stage they stand under the same millimetres of the section. */
  readonly plots: { readonly left: number; readonly right: number };
  /** Translation at the right end of the plots, mm. */
  readonly reach: number;
}

/** Nothing is drawn narrower than this; a narrower place shrinks the drawing. */
export const LEAST_WIDTH = 280;
/** From this width on the height no longer grows with the width. */
export const WIDE = 420;
const WIDE_HEIGHT = 840;
const STAGE_ASPECT = 0.44;
/** Lettering on a stage as a share of its width: 4.5 and 6 hundredths of a screen's height at 16 : 9. */
const STAGE_SIZE = 0.0253;
const STAGE_KEY_SIZE = 0.034;
const STAGE_WEIGHT = 1.6;
/** Room in the section below the deepest point, and above the ball's centre at its highest, mm. */
const BELOW = 6.5;
const ABOVE = 4;
/** The usual ball and cup, mm: smaller ones are drawn at the same scale. */
const USUAL_RISE = 28;
const USUAL_REACH = 17;
const RIM = 3;
/** In sizes of the lettering: a picture this wide has columns, this much beside the plots; without, room for numbers. */
const COLUMNED = 46;
const COLUMN = 13;
const NUMBERS = 2.6;
const LINE = 1.35;

export function layoutFor(cups: readonly Cup[], width: number, isStage = false): Layout {
  return isStage ? stageLayout(cups, width) : pageLayout(cups, width);
}

function pageLayout(cups: readonly Cup[], width: number): Layout {
  const size = width < WIDE ? 13 : 15;
  const height = Math.round(width < WIDE ? (width * WIDE_HEIGHT) / WIDE : WIDE_HEIGHT);
  const isColumned = width >= size * COLUMNED;
  const { reach, rise } = extent(cups);
  const axis = size * LINE * 4.6;
  const overPath = size * LINE * (isColumned ? 1.5 : 1.9);
  const overRatio = size * LINE * (isColumned ? 1.5 : 3.7);
  const room = height - axis - overPath - overRatio;
  const section = { top: 0, bottom: Math.round(room * 0.59), right: width };
  const path = band(section.bottom + overPath, room * 0.185);
  const ratio = band(path.bottom + overRatio, room * 0.225);
  const beside = size * (isColumned ? COLUMN : NUMBERS);
  const scale = Math.min(
    section.bottom / (BELOW + ABOVE + rise),
    (width / 2 - beside) / reach,
    width / 2 / Math.max(USUAL_REACH, reach + RIM),
  );
  const view = sectionView(section.right, section.bottom, scale);
  return {
    arrangement: isColumned ? 'columned' : 'stacked',
    width,
    height,
    size,
    keySize: size * (isColumned ? 1.1 : 1),
    weight: 1,
    view,
    section,
    path,
    ratio,
    plots: { left: view.x(-reach), right: view.x(reach) },
    reach,
  };
}

function stageLayout(cups: readonly Cup[], width: number): Layout {
  const size = width * STAGE_SIZE;
  const keySize = width * STAGE_KEY_SIZE;
  const height = Math.round(width * STAGE_ASPECT);
  const { reach, rise } = extent(cups);
  const section = { top: 0, bottom: height, right: Math.round(width * 0.46) };
  const axis = size * 2.9;
  const words = keySize * 1.35;
  const gap = keySize * 1.7;
  const room = height - axis - words - gap - keySize * 2.6;
  const path = band(words, room * 0.42);
  const ratio = band(path.bottom + gap, room * 0.58);
  const scale = Math.min(
    height / (BELOW + ABOVE + rise),
    section.right / 2 / Math.max(USUAL_REACH, reach + RIM),
  );
  const view = sectionView(section.right, height, scale);
  const plots = { left: section.right + size * 3.4, right: width - size * 0.8 };
  return {
    arrangement: 'stage',
    width,
    height,
    size,
    keySize,
    weight: STAGE_WEIGHT,
    view,
    section,
    path,
    ratio,
    plots,
    reach,
  };
}

/** The millimetres of translation under a screen position, by the scale of the plots. */
export function plottedTranslation({ plots, reach }: Layout, x: number): number {
  return reach * ((2 * (x - plots.left)) / (plots.right - plots.left) - 1);
}

function extent(cups: readonly Cup[]): { readonly reach: number; readonly rise: number } {
  return {
    reach: Math.max(...cups.map(({ socket }) => socket.width / 2)),
    rise: Math.max(USUAL_RISE, ...cups.map(({ socket, ballRadius }) => ballRadius + socket.depth)),
  };
}

function sectionView(width: number, height: number, scale: number): View {
  return createView({ width, height, scale, origin: { x: width / 2, y: height - BELOW * scale } });
}

function band(top: number, height: number): Band {
  return { top: Math.round(top), bottom: Math.round(top + height) };
}
