import type { Table } from '../../figures/csv.ts';
import { evenRows } from './curve.ts';
import type { Print } from './print.ts';

/** Rows to read on the page, and rows to compute with. */
export const READABLE_ROWS = 15;
const FILE_ROWS = 113;
const DECIMALS = 5;
const NONE = 'none';

const rounded = (value: number | null): number | string =>
  value === null ? NONE : Number(value.toFixed(DECIMALS));

/** What the ball meets on its way from the middle to the rim. */
export function curveTable({ pair, layer }: Print, count: number = FILE_ROWS): Table {
  return {
    header: [
      'translation (mm)',
      'stability ratio, elastic (no unit)',
      'stability ratio, rigid (no unit)',
      'peak pressure (MPa)',
      'load within 1 mm of the rim (share)',
      'print',
    ],
    rows: evenRows(pair, layer, count).map((row) => [
      rounded(row.translation),
      rounded(row.stabilityRatio),
      rounded(row.rigidRatio),
      rounded(row.peakPressure),
      rounded(row.rimShare),
      row.state,
    ]),
  };
}

/** The map: every patch with its place seen en face, area and mean pressure. */
export function mapTable({ contact }: Print): Table {
  return {
    header: ['along the translation (mm)', 'across it (mm)', 'area (mm²)', 'pressure (MPa)'],
    rows: contact.patches.map(({ x, y, area, pressure }) => [x, y, area, pressure].map(rounded)),
  };
}
