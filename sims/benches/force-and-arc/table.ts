import type { Table } from '../../figures/csv.ts';
import { marginOverTilt } from './margin.ts';
import { inDegrees, type ForceReading } from './reading.ts';
import { tiltRange } from './settings.ts';

/** Rows to read on the page, one every 5°, and rows to compute with, one every half degree. */
export const READABLE_ROWS = 13;
const FILE_ROWS = 121;
const DECIMALS = 4;

/** Margin and rest of the present force against the turn of the socket. */
export function marginTable(reading: ForceReading, count: number = FILE_ROWS): Table {
  const { plane } = reading;
  const [positive, negative] = plane.towards;
  const rows = marginOverTilt(reading, [tiltRange.min, tiltRange.max], count);
  return {
    header: [
      `${plane.tilt} (°)`,
      `force angle (°, + ${positive}, - ${negative})`,
      'margin (°)',
      'rest position (mm)',
      'state',
    ],
    rows: rows.map(({ tilt, reading: { angle, margin, translation, state } }) => [
      rounded(tilt),
      angle === null ? '' : rounded(inDegrees(angle)),
      margin === null ? '' : rounded(inDegrees(margin)),
      translation === null ? '' : rounded(translation),
      state,
    ]),
  };
}

function rounded(value: number): number {
  return Number(value.toFixed(DECIMALS));
}
