import { loadAt, seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import type { Design } from '../../sims/benches/rocking-bench/settings.ts';
import { rockingTest, seatMemory, type RockingCycle } from '../../sims/mechanics/index.ts';
import { bare, nearRim, onePeg, opening, rest, testPress, twoPegs, twoPressFit } from './seats.ts';

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

export const held = rocking(twoPegs);
export const slipped = rocking(twoPressFit);
export const worn = rocking(twoPressFit, true);

/** What a peg answers as it is drawn out and let back: N, below 0 where it is pressed, against mm out of its hole. */
export type LoopPoint = readonly [out: number, pull: number];

const LOOP_STEP = 3;

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

/** How far the far edge lifts under the standard test’s press, the ball near the rim: what the bench would measure, mm. */
export const underTest = [
  { name: 'bonded, no pegs', design: { ...bare, bed: 'bonded' } },
  { name: 'two pegs', design: twoPegs },
  { name: 'one peg', design: onePeg },
].map(({ name, design }) => ({
  name,
  lift: rest(design as Design, { press: testPress, place: nearRim.place }).liftOff,
}));
