import { describe, expect, test } from 'vitest';
import {
  flatBed,
  peg,
  rockingTest,
  solveSeat,
  type RockingQuestion,
  type SeatElement,
  type SeatLoad,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';

const bed = flatBed(
  { kind: 'rectangle', width: 24, height: 34 },
  { layer: { thickness: 1, modulus: 12, poisson: 0 }, level: 0, elements: 600 },
);
const spring = (y: number, strength: number, tension: SeatElement['tension'] = 'limited') =>
  ({
    position: [0, y, 0],
    normal: [0, 0, 1],
    normalStiffness: 4000,
    tangentialStiffness: 0,
    tension,
    strength,
  }) as const satisfies SeatElement;
const load: SeatLoad = { force: [0, 0, -750], point: [0, -13, 0] };
/** Loads are found to a ten-thousandth of themselves; those of letting go to 1/512 of the largest. */
const FOUND = 2e-4;
const STEP = 1 / 256;

describe('cycles', () => {
  test('nothing slips: every cycle is the first, and each side that of solveSeat', () => {
    const elements = [...bed, spring(9, 1e6), spring(-9, 1e6)];
    const { cycles, outcome } = rockingTest({ seat: { elements }, load, cycles: 5 });
    const alone = solveSeat({ elements, load });
    expect(outcome).toBe('balanced');
    expect(cycles).toHaveLength(5);
    for (const { liftOff, oppositeLiftOff, slip } of cycles) {
      expectClose(liftOff, alone.liftOff, { relative: 1e-9 });
      expectClose(oppositeLiftOff, liftOff, { relative: 1e-9 });
      expect(slip).toBe(0);
    }
  });

  test('what slips stays slipped: the second cycle is not the first, and the last is the one before it', () => {
    const bonded = flatBed(
      { kind: 'rectangle', width: 24, height: 34 },
      { layer: { thickness: 10, modulus: 200, poisson: 0.3 }, level: -4, bond: 0.5, elements: 400 },
    );
    const shear: SeatLoad = { force: [0, -300, -750], point: [0, -13, 0] };
    const { cycles } = rockingTest({ seat: { elements: bonded }, load: shear, cycles: 12 });
    const lifts = cycles.map(({ liftOff }) => liftOff);
    const [first = NaN, second = NaN] = lifts;
    const [before = NaN, last = NaN] = lifts.slice(-2);
    expect(Math.abs(second / first - 1)).toBeGreaterThan(0.02);
    expectClose(last, before, { relative: 1e-3 });
    expect(cycles.at(-1)?.slip).toBeGreaterThan(0);
  });

  test('pegs whose strength fades let the gap grow cycle by cycle, up to that of pegs that only bear', () => {
    const elements = [...bed, spring(12, 60), spring(-12, 60)];
    const rocked = (residual: number) =>
      rockingTest({
        seat: { elements },
        load,
        cycles: 30,
        fading: { residual, over: 0.2 },
      }).cycles.map(({ liftOff }) => liftOff);
    const constant = rocked(1);
    const fading = rocked(0);
    expect(fading[9]).toBeGreaterThan(1.1 * (fading[1] ?? NaN));
    expectClose(constant.at(-1) ?? NaN, constant[4] ?? NaN, { relative: 1e-6 });
    fading.slice(2).forEach((lift, i) => {
      expect(lift).toBeGreaterThan((fading[i + 1] ?? NaN) * (1 - 1e-6));
    });
    const bearing = [...bed, spring(12, 0), spring(-12, 0)];
    expectClose(fading.at(-1) ?? NaN, solveSeat({ elements: bearing, load }).liftOff, {
      relative: 0.001,
    });
  });

  test('the first cycle of all ends where one load does', () => {
    const elements = [...bed, spring(12, 60)];
    const { cycles } = rockingTest({ seat: { elements }, load, cycles: 1 });
    expectClose(cycles[0]?.liftOff ?? NaN, solveSeat({ elements, load }).liftOff, {
      relative: 1e-12,
    });
  });

  test('a load that nothing holds ends the test in words', () => {
    const outside: SeatLoad = { force: [0, 0, -750], point: [0, -18, 0] };
    expect(rockingTest({ seat: { elements: bed }, load: outside, cycles: 3 })).toMatchObject({
      outcome: 'overturned',
      overturned: true,
      converged: false,
      cycles: [],
      greatestLoad: 0,
    });
  });
});

describe('through the middle between the rims', () => {
  const level = -4;
  const layer = { thickness: 6, modulus: 210, poisson: 0.3 };
  const under = (bond?: number) =>
    flatBed({ kind: 'pear', width: 29, height: 35 }, { layer, level, bond, elements: 400 });
  const lone = [
    ...under(),
    ...peg({ x: 0, y: 0, diameter: 6, length: 10, kind: 'fluted press-fit', bone: layer, level }),
  ];
  const atRim: SeatLoad = { force: [0, -340, -750], point: [0, -12, 2] };
  const gaps = (
    elements: readonly SeatElement[],
    throughMiddle: boolean,
    fading?: RockingQuestion['fading'],
  ): readonly number[] => {
    const question = { seat: { elements }, load: atRim, cycles: 20, throughMiddle, fading };
    const { cycles, outcome } = rockingTest(question);
    expect(outcome).toBe('balanced');
    return cycles.map(({ liftOff }) => liftOff);
  };
  const wearing = { residual: 0.3, over: 0.5 };

  test('with strengths that stay, gaps end where they end without it', () => {
    for (const elements of [lone, under(0.5)]) {
      const [straight, through] = [gaps(elements, false), gaps(elements, true)];
      expectClose(through[0] ?? NaN, straight[0] ?? NaN, { relative: 1e-9 });
      expectClose(through.at(-1) ?? NaN, straight.at(-1) ?? NaN, { relative: 0.01 });
    }
  });

  test('with strengths that fade, a lone peg opens to about twice the gap, a bonded bed to less', () => {
    const last = (elements: readonly SeatElement[]): number =>
      (gaps(elements, true, wearing).at(-1) ?? NaN) /
      (gaps(elements, false, wearing).at(-1) ?? NaN);
    expect(last(lone)).toBeGreaterThan(1.7);
    expect(last(lone)).toBeLessThan(2.5);
    expect(last(under(0.5))).toBeLessThan(0.9);
  });
});

describe('a load that grows', () => {
  test('is carried up to the strength, and opens a gap at stiffness × gap', () => {
    const elements = [spring(0, 250)];
    const pull: SeatLoad = { force: [0, 0, 100], point: [0, 0, 0] };
    const result = rockingTest({ seat: { elements }, load: pull, cycles: 0, leastGap: 0.02 });
    expectClose(result.greatestLoad, 250, { relative: FOUND });
    expectClose(result.firstGapLoad ?? NaN, 4000 * 0.02, { relative: FOUND });
    expect(result.lettingGo).toEqual([]);
  });

  test('two anchors let go one after the other, each at its share of the pull', () => {
    // A beam pulled at 4 mm off the middle of two anchors at ±10 mm: 0.7 and 0.3 of the load, until the first slips.
    const elements = [spring(10, 70), spring(-10, 90)];
    const pull: SeatLoad = { force: [0, 0, 120], point: [0, 4, 0] };
    const { lettingGo, greatestLoad } = rockingTest({ seat: { elements }, load: pull, cycles: 0 });
    // The moment about the other anchor leaves nothing to share: with the first gone the beam turns over.
    expectClose(greatestLoad, 100, { relative: FOUND });
    expect(lettingGo.map(({ element }) => element)).toEqual([]);
  });

  test('on a bed the nearest peg to the lifting rim lets go first, in the order of their pulls', () => {
    const elements = [...bed, spring(14, 60), spring(7, 60), spring(0, 60)];
    const { lettingGo } = rockingTest({ seat: { elements }, load, cycles: 0 });
    const first = bed.length;
    const order = lettingGo.map(({ element }) => element - first);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBe(0);
    const linear = solveSeat({
      elements: [...bed, spring(14, 1e6), spring(7, 1e6), spring(0, 1e6)],
      load,
    });
    const pull = -(linear.elements[first]?.normalForce ?? NaN);
    // Until the first slips everything grows in proportion.
    expectClose(lettingGo[0]?.load ?? NaN, (750 * 60) / pull, {
      relative: STEP,
      absolute: 750 * STEP,
    });
  });

  test('a bed alone with the load inside it carries any, and gapes at once where it is outside the kern', () => {
    const result = rockingTest({ seat: { elements: bed }, load, cycles: 1, leastGap: 0.001 });
    expect(result.greatestLoad).toBe(Infinity);
    const per = solveSeat({ elements: bed, load }).liftOff / 750;
    expectClose(result.firstGapLoad ?? NaN, 0.001 / per, { relative: FOUND });
    const centred: SeatLoad = { force: [0, 0, -750], point: [0, 0, 0] };
    expect(
      rockingTest({ seat: { elements: bed }, load: centred, cycles: 1 }).firstGapLoad,
    ).toBeNull();
  });
});

test.each([-1, 1.5, NaN])('refuses %d cycles', (cycles) => {
  expect(() => rockingTest({ seat: { elements: bed }, load, cycles })).toThrow('cycles');
});
