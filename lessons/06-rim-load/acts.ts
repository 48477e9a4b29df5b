import type { RockingAct } from '../../sims/benches/rocking-bench/acts.ts';
import { measuredAct } from '../../sims/benches/rocking-bench/measured-act.ts';
import { atRim, onePeg, press, testPress } from './seats.ts';
import { BEYOND, LEFT, pairAt, QUARTER } from './stage-seats.ts';

/** One socket, a press of the clicker at a time. */
export const oneActs: readonly RockingAct[] = [
  measuredAct('in the middle', {}),
  measuredAct('a quarter out', { place: QUARTER }),
  measuredAct('beyond', { place: BEYOND }),
  measuredAct('at the rim', { place: atRim.place }),
  measuredAct('rim, one peg', { place: atRim.place, a: onePeg, b: onePeg }),
];

/** How many times as large the movement of one socket is drawn, and of two. */
export const ONE_TIMES = 50;
export const PAIR_TIMES = 5;

const [pressed, held, slipping, wearing] = [
  measuredAct('pressed once', pairAt(press)),
  measuredAct('rocked', pairAt(press), true),
  measuredAct('rocked harder', pairAt(testPress), true),
  measuredAct('and it wears', pairAt(testPress, LEFT), true),
] as const;

/** Two sockets, one peg and two: pressed, and rocked. */
export const pairActs: readonly RockingAct[] = [pressed, held, slipping, wearing];

/** The rockings of the one peg, by what it does. */
export const rockings = [
  { name: 'holds', ...held.measured.a },
  { name: 'slips', ...slipping.measured.a },
  { name: 'slips, wears', ...wearing.measured.a },
] as const;
