import { positive } from '../geometry/numeric.ts';
import { checkedOutline, halfChord, outlineCurve, type Outline } from '../geometry/outline.ts';

/** Outline of the back of a socket, in mm: a face's outline, or a rectangle. */
export type SeatOutline =
  Outline | { readonly kind: 'rectangle'; readonly width: number; readonly height: number };

/** A piece of the plane inside an outline, seen en face. */
export interface OutlineCell {
  /** mm, of its centre of area */
  readonly x: number;
  readonly y: number;
  /** mm² */
  readonly area: number;
}

/**
 * Cuts an outline into about `count` cells: rows of one height, each cut into equal cells along its own chord, so that
 * the edge is followed and no cell is cut through.
 *
 * @throws RangeError for an outline that is none, or fewer than 4 cells
 */
export function outlineCells(outline: SeatOutline, count: number): readonly OutlineCell[] {
  if (!Number.isFinite(count) || count < 4) {
    throw new RangeError(`elements is ${count}; allowed: 4 and more`);
  }
  const { height, width, halfWidthAt } = shapeOf(outline);
  const rows = Math.max(2, Math.round(Math.sqrt((count * height) / width)));
  const rowHeight = height / rows;
  const size = (width * height) / count;
  return Array.from({ length: rows }, (_, j) => {
    const y = -height / 2 + (j + 0.5) * rowHeight;
    const half = meanHalfWidth(halfWidthAt, y, rowHeight);
    const columns = Math.max(1, Math.round((2 * half * rowHeight) / size));
    const cell = (2 * half) / columns;
    return Array.from({ length: columns }, (_unused, i) => ({
      x: -half + (i + 0.5) * cell,
      y,
      area: cell * rowHeight,
    }));
  }).flat();
}

function shapeOf(outline: SeatOutline) {
  if (outline.kind === 'rectangle') {
    const width = positive('outline.width', outline.width, 'mm');
    const height = positive('outline.height', outline.height, 'mm');
    return { width, height, halfWidthAt: () => width / 2 };
  }
  const known = checkedOutline(outline);
  const curve = outlineCurve(known);
  const halfWidthAt = (y: number): number => halfChord(curve, y);
  return { width: known.width, height: known.height, halfWidthAt };
}

/** Mean over a row's height, by Gauss's two points: the rows then have the area of the outline. */
function meanHalfWidth(halfWidthAt: (y: number) => number, y: number, rowHeight: number): number {
  const away = rowHeight / (2 * Math.sqrt(3));
  return (halfWidthAt(y - away) + halfWidthAt(y + away)) / 2;
}
