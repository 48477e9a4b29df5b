import {
  measuredLoad,
  posedBySim,
  posedByTheory,
} from '../../../../sims/benches/rocking-bench/posed.ts';
import { runToEnd, startScene } from '../../../../sims/benches/rocking-bench/run.ts';
import { seatOf } from '../../../../sims/benches/rocking-bench/seat.ts';
import {
  defaultSetting,
  type Design,
  type RockingSetting,
} from '../../../../sims/benches/rocking-bench/settings.ts';

const DESIGNS: readonly Partial<Design>[] = [
  { layout: 'one' },
  { layout: 'upright' },
  { layout: 'four', kind: 'fluted press-fit' },
  { layout: 'keel', kind: 'keel cemented' },
  { layout: 'upright', bed: 'bonded' },
  { layout: 'one', kind: 'fluted press-fit', bed: 'rough' },
];
const PLACES = [30, 60, 90];
const PRESSES = [300, 750];

const tries = DESIGNS.flatMap((change) =>
  PLACES.flatMap((place) =>
    PRESSES.map((press) => {
      const setting: RockingSetting = { ...defaultSetting, place, press };
      const seat = seatOf(setting, { ...setting.a, ...change });
      const reading = runToEnd(startScene(setting, seat));
      const measured = posedBySim(reading, seat);
      const theory = posedByTheory(setting, seat, measuredLoad(setting, reading));
      if (measured.state !== 'at rest' || theory.state !== 'at rest') {
        throw new Error(`${change.layout ?? ''} at ${place}: ${measured.state}, ${theory.state}`);
      }
      return Math.abs(measured.liftOff / theory.liftOff - 1);
    }),
  ),
);

/** How many sockets were loaded when the page was built, and how far their gaps lay from the solver’s, as a share. */
export const sockets = tries.length;
export const largestDifference = Math.max(...tries);
export const meanDifference = tries.reduce((sum, value) => sum + value, 0) / sockets;
