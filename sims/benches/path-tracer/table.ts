import { ballPath } from '../../geometry/index.ts';
import type { Table } from '../../figures/csv.ts';
import { withFriction } from './curves.ts';
import type { Drawn } from './setting.ts';

/** Rows to read on the page, and rows to compute with. */
export const READABLE_ROWS = 15;
const FILE_ROWS = 121;
const DECIMALS = 5;

/** Translation, climb and ratio of a setting from the middle to the rim; a column more with friction. */
export function tracerTable({ cup }: Drawn, friction: number, count: number = FILE_ROWS): Table {
  const rows = ballPath(cup.socket, cup.ballRadius, count);
  const rubbed = withFriction(rows, cup, friction);
  const hasFriction = friction > 0;
  return {
    header: [
      'translation (mm)',
      'climb (mm)',
      'stability ratio (no unit)',
      ...(hasFriction ? [`stability ratio with friction ${friction.toFixed(2)} (no unit)`] : []),
    ],
    rows: rows.map((row, i) => [
      rounded(row.translation),
      rounded(row.climb),
      rounded(row.stabilityRatio),
      ...(hasFriction ? [rounded(rubbed[i]?.stabilityRatio ?? Infinity)] : []),
    ]),
  };
}

function rounded(value: number): number {
  return Number.isFinite(value) ? Number(value.toFixed(DECIMALS)) : value;
}
