import type { Table } from '../../figures/csv.ts';
import type { StripSetting } from './settings.ts';
import { sagAt, shearAt, WIDTH, type Strip } from './strip.ts';

/** Rows to read on the page, and rows to compute with. */
export const READABLE_ROWS = 11;
const FILE_ROWS = 201;
const DECIMALS = 6;

/** What the drawing shows along the strip. */
export function stripTable({ length }: StripSetting, strip: Strip, count = FILE_ROWS): Table {
  const { shear, arm } = strip;
  return {
    header: [
      'place along the strip (mm)',
      'shear in the joint under the pull (MPa)',
      'shear over its mean (no unit)',
      'load passed over (N/mm)',
      'height under the press at the rim (µm)',
    ],
    rows: Array.from({ length: count }, (_, i) => {
      const place = (length * i) / (count - 1);
      const stress = shearAt(shear, place);
      return [
        place,
        stress,
        stress / shear.mean,
        stress * WIDTH,
        1000 * sagAt(strip, place - arm),
      ].map((value) => Number(value.toFixed(DECIMALS)) + 0);
    }),
  };
}
