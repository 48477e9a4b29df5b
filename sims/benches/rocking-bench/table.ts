import type { Table } from '../../figures/csv.ts';
import type { RockingBench } from './state.svelte.ts';

const MICROMETRES = 1000;
const DECIMALS = 2;

/** The rocking, load by load; before any, one row of how the sockets lie now. Gaps in µm. */
export function rockingTable(bench: RockingBench): Table {
  const { rims, rocked, shown, theory, setting } = bench;
  const header = ['load', 'place of the ball (% of the way to the rim)'].concat(
    ['A', 'B'].flatMap((name) => [
      `${name}, gap (µm)`,
      `${name}, gap by the solver (µm)`,
      `${name}, press-in (µm)`,
      `${name}, slipped (µm)`,
    ]),
  );
  const loads = Math.max(rims.a.length, rims.b.length);
  if (rocked === null || loads === 0) {
    const cells = (['a', 'b'] as const).flatMap((name) => [
      micrometres(shown[name].liftOff),
      micrometres(theory[name].liftOff),
      micrometres(shown[name].pressIn),
      micrometres(bench.readings?.[name].slips.reduce((most, slip) => Math.max(most, slip), 0)),
    ]);
    return { header, rows: [['now', setting.place, ...cells]] };
  }
  const rows = Array.from({ length: loads }, (_, i) => {
    const cells = (['a', 'b'] as const).flatMap((name) => {
      const rim = rims[name][i];
      return [rim?.liftOff, rocked.theory[name][i], rim?.pressIn, rim?.slip].map(micrometres);
    });
    return [i + 1, setting.place * (i % 2 === 0 ? 1 : -1), ...cells];
  });
  return { header, rows };
}

function micrometres(value: number | undefined): number | string {
  return value === undefined ? '' : Number((value * MICROMETRES).toFixed(DECIMALS));
}
