import { isobarAt } from './isobar.ts';
import type { Print } from './print.ts';

/** What part of the face a detail shows. */
export interface Window {
  /** Middle of the part, on the line of the translation, mm. */
  readonly x: number;
  /** Height and width shown, mm. */
  readonly high: number;
  readonly wide: number;
  /** Screen units per millimetre. */
  readonly scale: number;
}

/** Heights a detail may show, mm: few, so that it does not swell and shrink as the ball slides. */
const HEIGHTS = [3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 28, 32, 36, 40, 48, 56, 64, 80];
/** How much of the window the print may fill; the rest holds lettering. */
const FILL = 0.86;
const FILL_ACROSS = 0.7;
/** The print stands so far right of the middle, as a share of the width: its numbers are on the left. */
const LEFT_ROOM = 0.1;

/** The smallest part of the face that holds the whole print, in the shape of a box on the screen. */
export function detailWindow(
  { field }: Print,
  box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  },
): Window {
  const { left, right, high } = printExtent(field);
  const aspect = (box.right - box.left) / (box.bottom - box.top);
  const needed = Math.max(high / FILL, (right - left) / FILL_ACROSS / aspect);
  const shown = HEIGHTS.find((height) => height >= needed) ?? needed;
  const scale = (box.bottom - box.top) / shown;
  const wide = shown * aspect;
  return { x: (left + right) / 2 - wide * LEFT_ROOM, high: shown, wide, scale };
}

/** The print's ends along the translation and its height across it, seen en face, mm. */
function printExtent(field: Print['field']): {
  readonly left: number;
  readonly right: number;
  readonly high: number;
} {
  const isobar = isobarAt(field, 0);
  const across = isobar.outline.map(({ x }) => x);
  return { left: Math.min(...across), right: Math.max(...across), high: 2 * isobar.high };
}
