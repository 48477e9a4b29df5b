import { fixed, type Point, type View } from '../../figures/view.ts';
import { isobarLevels, peakPlace } from './field.ts';
import { isobarAt, leftEnd, type Isobar, type PlanePoint } from './isobar.ts';
import type { Print } from './print.ts';

/** How far from the rim, along the surface, counts as near it, mm. */
const RIM_MARGIN = 1;
/** The hatched part, as a share of the peak. */
const TOP = 0.9;

/** The print as it is drawn, in mm of the face. */
export interface PrintFigure {
  /** From the print's own edge, under no pressure, to the highest round pressure. */
  readonly isobars: readonly Isobar[];
  /** Where the pressure is next to its peak. */
  readonly top: Isobar;
  readonly peak: PlanePoint;
  readonly rim: number;
  /** Where the margin of the rim begins; null where the face is all margin. */
  readonly margin: number | null;
}

export function printFigure({ field, contact }: Print): PrintFigure {
  const { curvatureRadius, halfArc } = field;
  const inner = halfArc - RIM_MARGIN / curvatureRadius;
  return {
    isobars: [0, ...isobarLevels(contact.peakPressure)].map((level) => isobarAt(field, level)),
    top: isobarAt(field, TOP * contact.peakPressure),
    peak: { x: peakPlace(field), y: 0 },
    rim: curvatureRadius * Math.sin(halfArc),
    margin: inner > 0 ? curvatureRadius * Math.sin(inner) : null,
  };
}

/** A closed outline on the screen; '' where there is none. */
export function outlinePath({ outline }: Isobar, view: View): string {
  if (outline.length === 0) return '';
  const points = outline.map(({ x, y }) => `${fixed(view.x(x))} ${fixed(view.y(y))}`);
  return `M${points.join('L')}Z`;
}

/** An isobar's number and the line that leads from it to the isobar, on the screen. */
export interface IsobarLabel {
  readonly text: string;
  readonly at: Point;
  readonly end: Point;
}

const LINE = 1.25;
const ON_ISOBAR = 0.8;

/**
 * Numbers of the isobars in a column, each at the height of its isobar where there is room for it, and below the one of
 * the next lower pressure where there is not.
 *
 * @param x left end of the numbers
 */
export function isobarLabels(
  { isobars }: PrintFigure,
  { field }: Print,
  view: View,
  x: number,
  size: number,
): readonly IsobarLabel[] {
  const labels: IsobarLabel[] = [];
  let least = -Infinity;
  for (const { pressure, high } of isobars) {
    if (pressure === 0 || high === 0) continue;
    const y = Math.max(least, view.y(ON_ISOBAR * high));
    const row = Math.max(-ON_ISOBAR * high, Math.min(ON_ISOBAR * high, view.toMm(0, y).z));
    const end = leftEnd(field, pressure, row);
    if (end === null) continue;
    least = y + LINE * size;
    labels.push({
      text: labels.length === 0 ? `${pressure} MPa` : String(pressure),
      at: { x, y },
      end: { x: view.x(end), y: view.y(row) },
    });
  }
  return labels;
}
