import { loadAt, seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import type { Design } from '../../sims/benches/rocking-bench/settings.ts';
import { seatMemory } from '../../sims/mechanics/index.ts';
import {
  bare,
  nearRim,
  onePeg,
  onePressFit,
  opening,
  rest,
  testPress,
  twoPegs,
  twoPressFit,
} from './seats.ts';

/*
 * The lesson’s curves, many solutions each: apart from the numbers in its text, which come at once.
 */

/** Gap against press near the rim, N and mm, and the press at which a peg first slips; null where none does. */
export interface Growth {
  readonly points: readonly (readonly [press: number, gap: number])[];
  readonly slipsAt: number | null;
}

export const MOST_PRESS = 1000;
const PRESS_STEP = 20;

export function growthOf(design: Design): Growth {
  const presses = Array.from({ length: MOST_PRESS / PRESS_STEP + 1 }, (_, i) => i * PRESS_STEP);
  const rests = presses.map((each) =>
    each === 0 ? null : rest(design, { place: nearRim.place, press: each }),
  );
  const slipping = rests.findIndex((posed) => posed?.holds.some((hold) => hold.isSlipping));
  return {
    points: presses.map((each, i) => [each, rests[i]?.liftOff ?? 0]),
    slipsAt: slipping < 0 ? null : (presses[slipping] ?? null),
  };
}

/** Curves with the name they go by in a drawing. */
export const growths = [
  { name: 'one, pressed in', ...growthOf(onePressFit) },
  { name: 'one, cemented', ...growthOf(onePeg) },
  { name: 'two, cemented', ...growthOf(twoPegs) },
];

/** Gap against the place of the ball under the lesson’s press; per cent and mm. */
export const gapsByPlace = [
  { name: 'nothing', design: bare },
  { name: 'one peg', design: onePeg },
  { name: 'two pegs', design: twoPegs },
].map(({ name, design }) => ({
  name,
  points: Array.from({ length: 51 }, (_, i) => 2 * i).flatMap((place) => {
    const { state, liftOff } = rest(design, { place });
    return state === 'at rest' ? [[place, liftOff] as const] : [];
  }),
}));

/** What a peg answers as it is drawn out and let back: N, below 0 where it is pressed, against mm out of its hole. */
export type LoopPoint = readonly [out: number, pull: number];

const LOOP_STEP = 1;

/** The lower press-fit peg while the ball goes to the top, to the bottom and to the top again, under the test’s press. */
function loopOf(): readonly LoopPoint[] {
  const setting = { ...opening, press: testPress };
  const { elements } = seatOf(setting, twoPressFit);
  const peg = elements.findIndex(
    ({ tension, position }) => tension === 'limited' && position[1] < 0,
  );
  const memory = seatMemory(elements);
  return way([0, nearRim.place, -nearRim.place, nearRim.place]).map((place) => {
    const answer = memory.bear(loadAt(setting, place)).elements[peg];
    return [answer?.gap ?? 0, -(answer?.normalForce ?? 0)];
  });
}

/** Places of the ball on its way through turning points, per cent. */
function way(turns: readonly number[]): readonly number[] {
  return turns.flatMap((to, i) => {
    const from = turns[i - 1] ?? to;
    const steps = Math.max(1, Math.abs(to - from) / LOOP_STEP);
    return Array.from({ length: steps }, (_, k) => from + ((to - from) * (k + 1)) / steps);
  });
}

export const loop = loopOf();
/** How far out that peg stands when, on its way back from the first time, nothing pulls it: what it has slipped, mm. */
export const keptSlip = outUnpulled(loop);

function outUnpulled(points: readonly LoopPoint[]): number {
  const home = points.findIndex(([, pull], i) => pull <= 0 && (points[i - 1]?.[1] ?? 0) > 0);
  const [before, after] = [points[home - 1], points[home]];
  if (before === undefined || after === undefined) throw new Error('the peg is never let back');
  const share = before[1] / (before[1] - after[1]);
  return before[0] + share * (after[0] - before[0]);
}
