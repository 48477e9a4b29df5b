import type { Table } from '../../figures/csv.ts';
import type { CementHeat } from '../../mechanics/index.ts';
import type { HoldName } from './settings.ts';

/** Seconds from row to row of the table to read, and of the file. */
export const READABLE_STEP = 120;
const FILE_STEP = 10;
const DECIMALS = 3;

/** Temperatures through time, both designs. */
export function heatTable(
  heats: Readonly<Record<HoldName, CementHeat>>,
  step: number = FILE_STEP,
): Table {
  const { times } = heats.pegs.histories;
  const every = Math.round(step / ((times[1] ?? 1) - (times[0] ?? 0)));
  const rows = Array.from(times.keys()).filter((n) => n % every === 0);
  return {
    header: [
      'time (s)',
      'bone at a peg (°C)',
      'middle of the cement at a peg (°C)',
      'bone at the keel (°C)',
      'middle of the cement at the keel (°C)',
    ],
    rows: rows.map((n) =>
      [
        times[n],
        heats.pegs.histories.bone[n],
        heats.pegs.histories.cement[n],
        heats.keel.histories.bone[n],
        heats.keel.histories.cement[n],
      ].map((value) => Number((value ?? NaN).toFixed(DECIMALS))),
    ),
  };
}
