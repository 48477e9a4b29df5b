import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  rockingTest,
  seatMemory,
  solveSeat,
  type Fading,
  type SeatElement,
  type SeatLoad,
  type SeatOutcome,
} from '../../../sims/mechanics/index.ts';
import { imbalance } from './seat-balance.ts';
import { built, point, seatOnGrid, within } from './seat-designs.ts';

const fading: fc.Arbitrary<Fading> = fc.record({
  residual: fc.oneof(fc.constant(0), within(0, 1)),
  over: within(0.005, 1),
});
const load = fc.record({
  force: fc.oneof(
    { weight: 4, arbitrary: fc.tuple(within(-400, 400), within(-400, 400), within(-1500, -1)) },
    { weight: 2, arbitrary: fc.tuple(fc.constant(0), fc.constant(0), within(1, 4000)) },
    { weight: 1, arbitrary: fc.constant([0, 0, 0] as [number, number, number]) },
  ),
  at: point(16),
});
const loads = fc
  .array(load, { minLength: 2, maxLength: 10 })
  .map((list) => list.map(({ force, at }): SeatLoad => ({ force, point: [...at, 0] })));

const scaled = ({ force: [x, y, z], point: at }: SeatLoad, by: number): SeatLoad => ({
  force: [x * by, y * by, z * by],
  point: at,
});

/** What holds of elements after the ways they have slipped, N. */
function worn(
  elements: readonly SeatElement[],
  ways: readonly number[],
  { residual, over }: Fading,
): readonly SeatElement[] {
  return elements.map((element, i) => {
    if (element.tension !== 'limited') return element;
    const left = residual + (1 - residual) * Math.exp(-(ways[i] ?? 0) / over);
    return { ...element, strength: (element.strength ?? 0) * left };
  });
}

const press = (force: number, y: number): SeatLoad => ({ force: [0, 0, -force], point: [0, y, 0] });
const plain = {
  width: 19,
  height: 32,
  isRound: true,
  bond: undefined,
  pegs: [],
  load: { force: [0, 0, -50], at: [0, 0] },
} satisfies Parameters<typeof built>[0];

describe('strengths that fade with slip', () => {
  test('every load is balanced to 1e-9 within the strengths that are left, or said not to be', () => {
    const ends: Partial<Record<SeatOutcome, number>> = {};
    fc.assert(
      fc.property(seatOnGrid, fading, loads, (wish, fade, list) => {
        const { elements } = built(wish, 60);
        const memory = seatMemory(elements);
        const ways = elements.map(() => 0);
        const slips = elements.map(() => 0);
        for (const one of list) {
          const holding = worn(elements, ways, fade);
          const solution = memory.bear(one);
          ends[solution.outcome] = (ends[solution.outcome] ?? 0) + 1;
          expect(solution.outcome).not.toBe('unsettled');
          expect([solution.liftOff, solution.pressIn].every(Number.isFinite)).toBe(true);
          if (!solution.converged) continue;
          const size = Math.max(1, Math.hypot(...one.force));
          expect(imbalance(elements, one, solution, size)).toBeLessThan(1e-9);
          solution.elements.forEach(({ normalForce, gap, slip }, i) => {
            const { tension, normalStiffness: k = 0, strength = 0 } = holding[i] ?? {};
            if (tension !== 'limited') return;
            const before = slips[i] ?? 0;
            const held = k * (Math.max(0, gap) - before);
            const pull = Math.max(-strength, Math.min(strength, held)) + k * Math.min(0, gap);
            expect(Math.abs(pull + normalForce)).toBeLessThan(
              1e-9 * (Math.abs(held) + strength + 1),
            );
            ways[i] = (ways[i] ?? 0) + Math.abs(slip - before);
            slips[i] = slip;
          });
          memory.wear(fade);
        }
      }),
      { numRuns: 150 },
    );
    expect(ends.balanced).toBeGreaterThan(100);
    expect(ends.overturned).toBeGreaterThan(3);
  });

  test('whether a load is borne hangs on the strengths left alone, not on what slipped before', () => {
    let [borne, lost] = [0, 0];
    fc.assert(
      fc.property(seatOnGrid, fading, loads, (wish, fade, list) => {
        // Grip of a bed that comes and goes is no matter of energy, and may hang on the way.
        const elements = built(wish, 60).elements.map((element) =>
          element.tension === 'none' ? { ...element, tangentialStiffness: 0 } : element,
        );
        const memory = seatMemory(elements);
        const ways = elements.map(() => 0);
        let slips = elements.map(() => 0);
        for (const one of list) {
          const holding = worn(elements, ways, fade);
          const here = memory.bear(one);
          const fresh = (by: number) => solveSeat({ elements: holding, load: scaled(one, by) });
          if (here.converged !== fresh(1).converged) {
            // At the edge itself rounding decides.
            expect(fresh(0.999).converged).not.toBe(fresh(1.001).converged);
          }
          if (here.converged) borne += 1;
          else lost += 1;
          if (!here.converged) continue;
          const next = here.elements.map(({ slip }) => slip);
          next.forEach((slip, i) => (ways[i] = (ways[i] ?? 0) + Math.abs(slip - (slips[i] ?? 0))));
          slips = next;
          memory.wear(fade);
        }
      }),
      { numRuns: 80 },
    );
    expect(Math.min(borne, lost)).toBeGreaterThan(0);
  });

  test('a rocking ends in words: all cycles borne, or the load at which it was lost named', () => {
    const ends: Partial<Record<SeatOutcome, number>> = {};
    fc.assert(
      fc.property(seatOnGrid, fading, fc.boolean(), (wish, fade, throughMiddle) => {
        const { elements, load: rim } = built(wish, 50);
        const question = { seat: { elements }, load: rim, cycles: 6, fading: fade, throughMiddle };
        const { outcome, converged, overturned, cycles } = rockingTest(question);
        ends[outcome] = (ends[outcome] ?? 0) + 1;
        expect(outcome).not.toBe('unsettled');
        expect(converged).toBe(outcome === 'balanced');
        expect(overturned).toBe(outcome === 'overturned');
        expect(cycles.length === 6).toBe(converged);
        for (const { liftOff, oppositeLiftOff, slip } of cycles) {
          expect([liftOff, oppositeLiftOff, slip].every(Number.isFinite)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
    expect(ends.balanced).toBeGreaterThan(5);
  });

  test('a socket freed of its load rests, and one that was lifted a hair rests again when pressed', () => {
    const flat = built({ ...plain, isRound: false, bond: 0.2 }, 60).elements;
    const bonded = seatMemory(flat);
    expect(bonded.bear(press(900, 11)).outcome).toBe('balanced');
    expect(bonded.slip()).toBeGreaterThan(0.001);
    expect(bonded.bear(press(0, 0)).outcome).toBe('balanced');
    const round = seatMemory(built(plain, 60).elements);
    const outcomes = [21.6, 0, -1, 1].map((force) => round.bear(press(force, 0)).outcome);
    expect(outcomes).toEqual(['balanced', 'balanced', 'overturned', 'balanced']);
  });
});
