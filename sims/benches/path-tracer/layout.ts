import { createView, type View } from '../../figures/view.ts';
import type { Cup } from '../shared/cup-setting.ts';

/** A horizontal strip of the picture. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** Where everything stands: three panels one above the other on one translation axis. */
export interface Layout {
  readonly width: number;
  readonly height: number;
  /** Size of the lettering. */
  readonly size: number;
  /** Whether titles and notes stand beside the plots rather than above them. */
  readonly isColumned: boolean;
  /** Millimetres of the section; its x is the translation of all three panels. */
  readonly view: View;
  readonly section: Band;
  readonly path: Band;
  readonly ratio: Band;
  /** Translation at the right end of the plots, mm. */
  readonly reach: number;
}

/** From this width on the height no longer grows with the width. */
const WIDE = 420;
const WIDE_HEIGHT = 840;
const NARROW_ASPECT = WIDE_HEIGHT / 380;
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

/**
 * @param width CSS pixels available
 * @param options.size lettering in CSS pixels
 * @param options.height CSS pixels; what suits the width where it is left out
 */
export function layoutFor(
  cups: readonly Cup[],
  width: number,
  options: { readonly size?: number | undefined; readonly height?: number | undefined } = {},
): Layout {
  const height = options.height ?? heightFor(width);
  const size = options.size ?? (width < WIDE ? 13 : 15);
  const reach = Math.max(...cups.map(({ socket }) => socket.width / 2));
  const rise = Math.max(...cups.map(({ socket, ballRadius }) => ballRadius + socket.depth));
  const lettering = size * 1.35;
  const axis = lettering * 4.6;

  const isColumned = width >= size * COLUMNED;
  const overPath = lettering * (isColumned ? 1.5 : 1.9);
  const overRatio = lettering * (isColumned ? 1.5 : 3.7);
  const room = height - axis - overPath - overRatio;
  const section = { top: 0, bottom: Math.round(room * 0.59) };
  const path = band(section.bottom + overPath, room * 0.185);
  const ratio = band(path.bottom + overRatio, room * 0.225);
  const beside = size * (isColumned ? COLUMN : NUMBERS);
  const scale = Math.min(
    section.bottom / (BELOW + ABOVE + Math.max(USUAL_RISE, rise)),
    (width / 2 - beside) / reach,
    width / 2 / Math.max(USUAL_REACH, reach + RIM),
  );
  const view = createView({
    width,
    height: section.bottom,
    scale,
    origin: { x: width / 2, y: section.bottom - BELOW * scale },
  });
  return { width, height, size, isColumned, view, section, path, ratio, reach };
}

/** The height that suits a width: fixed on a desk, growing with the width on a phone. */
export function heightFor(width: number): number {
  return Math.round(width < WIDE ? Math.min(WIDE_HEIGHT, width * NARROW_ASPECT) : WIDE_HEIGHT);
}

function band(top: number, height: number): Band {
  return { top: Math.round(top), bottom: Math.round(top + height) };
}
