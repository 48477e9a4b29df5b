import { magnification } from '../../sims/benches/rocking-bench/magnify.ts';
import { loadAt, seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import type { Design } from '../../sims/benches/rocking-bench/settings.ts';
import { rockingTest, type RockingCycle } from '../../sims/mechanics/index.ts';
import {
  bare,
  near,
  nearRim,
  onePeg,
  opening,
  rest,
  testPress,
  twoPegs,
  twoPressFit,
} from './seats.ts';

/** How many times as large the movement of the first drawing is. */
export const standTimes = magnification([near.onePeg]);

export const CYCLES = 10;
/** Share of a hold that is left after long slipping, where it wears. */
export const LEFT = 0.5;
/** Way slipped over which a wearing hold falls by 1/e, mm: the bench’s. */
export const WEARS_OVER = 0.5;

/** The rocking of a design under the test’s press, near both rims; its gaps, mm. */
export function rocking(design: Design, wears = false): readonly RockingCycle[] {
  const setting = { ...opening, press: testPress };
  return rockingTest({
    seat: seatOf(setting, design),
    load: loadAt(setting, nearRim.place),
    cycles: CYCLES,
    throughMiddle: true,
    fading: wears ? { residual: LEFT, over: WEARS_OVER } : undefined,
  }).cycles;
}

/** The gaps of a rocking, load by load, mm. */
export const gapsOf = (cycles: readonly RockingCycle[]): readonly number[] =>
  cycles.flatMap(({ liftOff, oppositeLiftOff }) => [liftOff, oppositeLiftOff]);

export const held = rocking(twoPegs);
export const slipped = rocking(twoPressFit);
export const worn = rocking(twoPressFit, true);
export const slippedGaps = gapsOf(slipped);
export const wornGaps = gapsOf(worn);

/** How far the far edge lifts under the standard test’s press, the ball near the rim: what the bench would measure, mm. */
export const underTest = [
  { name: 'bonded, no pegs', design: { ...bare, bed: 'bonded' } },
  { name: 'two pegs', design: twoPegs },
  { name: 'one peg', design: onePeg },
].map(({ name, design }) => ({
  name,
  lift: rest(design as Design, { press: testPress, place: nearRim.place }).liftOff,
}));
