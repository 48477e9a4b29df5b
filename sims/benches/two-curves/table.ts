import type { Table } from '../../figures/csv.ts';
import type { LayerSetting } from './layer.ts';
import { mismatchLimits } from './pair-limits.ts';
import { pairAt } from './pair.ts';
import type { PairSetting } from './pair-ranges.ts';
import { pressureRow, shapeRow } from './sweep.ts';

/** Rows to read on the page, and rows to compute with. */
export const READABLE_ROWS = 11;
const FILE_ROWS = 101;
const DECIMALS = 5;
const NONE = 'none';

/** Everything the panels draw, against mismatch; `setting` must be sound. */
export function curvesTable(setting: PairSetting & LayerSetting, count: number = FILE_ROWS): Table {
  const { min, max } = mismatchLimits(setting);
  return {
    header: [
      'radial mismatch (mm)',
      'diametral mismatch (mm)',
      'socket radius of curvature (mm)',
      'ball radius (mm)',
      'width (mm)',
      'depth (mm)',
      'arc (degrees)',
      'play before the rim (mm)',
      'peak stability ratio (no unit)',
      'peak pressure, thin layer (MPa)',
      'peak pressure, Hertz (MPa)',
    ],
    rows: Array.from({ length: count }, (_, i) => {
      const pair = pairAt(setting, min + ((max - min) * i) / (count - 1));
      const { play, peakRatio, depth } = shapeRow(pair);
      const { layer, hertz } = pressureRow(pair, setting);
      return [
        ...[pair.mismatch, 2 * pair.mismatch, pair.socket.curvatureRadius, pair.ballRadius],
        ...[pair.socket.width, depth, pair.shape.arc, play, peakRatio, layer, hertz],
      ].map((value) => (value === null ? NONE : Number(value.toFixed(DECIMALS))));
    }),
  };
}
