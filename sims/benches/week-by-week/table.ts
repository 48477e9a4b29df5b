import type { Table } from '../../figures/csv.ts';
import type { Ingrowth } from '../../mechanics/index.ts';
import { MICROMETRES } from './settings.ts';
import { mostly } from './run.ts';

/** Every week. */
export function weeksTable({ weeks }: Ingrowth): Table {
  const rounded = (value: number, digits: number): number | string =>
    Number.isFinite(value) ? Number(value.toFixed(digits)) : '';
  return {
    header: ['week', 'greatest motion (µm)', 'filled with bone (%)', 'far rim lifts (µm)', 'bone'],
    rows: weeks.map(({ week, motion, share, liftOff, places }) => [
      week,
      rounded(motion * MICROMETRES, 3),
      rounded(100 * share, 3),
      rounded(liftOff * MICROMETRES, 3),
      mostly(places),
    ]),
  };
}
