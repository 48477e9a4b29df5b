import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  flatBed,
  ingrowth,
  peg,
  solveSeat,
  usualIngrowthRates,
  usualMotionThresholds,
  type Ingrowth,
  type IngrowthQuestion,
  type SeatElement,
  type SeatLoad,
} from '../../../sims/mechanics/index.ts';
import { nextShare } from '../../../sims/mechanics/ingrowth.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { relative: 1e-9 };

const bone = { modulus: 230, poisson: 0.3 };
const level = -4;
const bed = flatBed(
  { kind: 'ellipse', width: 26, height: 34 },
  { layer: { ...bone, thickness: 10 }, level, elements: 300, isRough: true },
);
const fluted = peg({
  x: 0,
  y: 0,
  diameter: 7,
  length: 14,
  kind: 'fluted press-fit',
  bone,
  level,
});
const seat: readonly SeatElement[] = [...bed, ...fluted];
const place = bed.length;

/** A press at some height of the face, mm above its middle. */
const press = (newtons: number, up: number): SeatLoad => ({
  force: [0, 0, -newtons],
  point: [0, up, 0],
});
const ask = (question: Partial<IngrowthQuestion> = {}): Ingrowth =>
  ingrowth({ seat: { elements: seat }, load: press(200, 3), weeks: 12, ...question });

/** One spring along z: its motion is load over stiffness. */
const spring = (stiffness: number, strength = 1e9): readonly SeatElement[] => [
  {
    position: [0, 0, 0],
    normal: [0, 0, 1],
    normalStiffness: stiffness,
    tangentialStiffness: 0,
    tension: 'limited',
    strength,
  },
];
const pull = (newtons: number): SeatLoad => ({ force: [0, 0, newtons], point: [0, 0, 0] });
const shares = ({ weeks }: Ingrowth): number[] => weeks.map(({ share }) => share);

describe('ingrowth', () => {
  test('one spring by hand: 100 N on 5,000 N/mm move it 20 µm, and less every week', () => {
    const { weeks } = ingrowth({
      seat: { elements: spring(5000) },
      load: pull(100),
      weeks: 3,
      rates: { stiffening: 3 },
    });
    let share = 0;
    for (const { motion, places } of weeks) {
      expectClose(motion, 100 / (5000 * (1 + 2 * share)), EXACT);
      share = nextShare(share, 'grows', usualIngrowthRates);
      expect(places).toMatchObject([{ element: 0, bone: 'grows' }]);
      expectClose(places[0]?.share ?? NaN, share, EXACT);
    }
    expect(share).toBeGreaterThan(0.2);
  });

  test('between the thresholds it stays, above them it is lost', () => {
    const moved = (motion: number): Ingrowth =>
      ingrowth({ seat: { elements: spring(1000) }, load: pull(1000 * motion), weeks: 1 });
    const answer = (motion: number): string | undefined => moved(motion).weeks[0]?.places[0]?.bone;
    expect(answer(0.0279)).toBe('grows');
    expect(answer(0.0281)).toBe('stays');
    expect(answer(0.1499)).toBe('stays');
    expect(answer(0.1501)).toBe('is lost');
  });

  test('what has grown in is lost when the load grows beyond it', () => {
    const { weeks } = ingrowth({
      seat: { elements: spring(1000) },
      load: (week) => pull(week < 8 ? 10 : 600),
      weeks: 16,
    });
    const at = (week: number): number => weeks[week - 1]?.share ?? NaN;
    expect(at(8)).toBeGreaterThan(0.6);
    expectClose(at(9), at(8) * Math.exp(-usualIngrowthRates.loss), EXACT);
    expect(at(16)).toBeLessThan(0.05);
  });

  test('resting first carries a load that stops growth when it comes at once', () => {
    // 39 µm on a fresh place, less than 28 once bone has grown in.
    const load = pull(39);
    const [stiff, weeks] = [spring(1000), 26];
    const early = ingrowth({ seat: { elements: stiff }, load, weeks });
    const late = ingrowth({
      seat: { elements: stiff },
      load: (week) => (week < 6 ? null : load),
      weeks,
    });
    expect(early.share).toBe(0);
    expectClose(late.share, usualIngrowthRates.ceiling, { relative: 1e-3 });
    expect(late.weeks[0]).toMatchObject({ motion: 0, liftOff: 0, outcome: 'balanced' });
  });

  test('the seat of each week is solved with the bone it has', () => {
    const { weeks, elements } = ask();
    const after = solveSeat({ elements, load: press(200, 3) });
    const next = ask({ weeks: 13 }).weeks[12];
    expectClose(next?.liftOff ?? NaN, after.liftOff, EXACT);
    expect(weeks).toHaveLength(12);
    expect(elements[place]?.normalStiffness).toBeGreaterThan(fluted[0]?.normalStiffness ?? NaN);
    expect(elements.slice(0, place)).toStrictEqual(bed);
    const share = weeks[11]?.share ?? NaN;
    expectClose(
      elements[place]?.strength ?? NaN,
      (fluted[0]?.strength ?? NaN) * (1 + share * (usualIngrowthRates.strengthening - 1)),
      EXACT,
    );
  });

  test('more load near the rim never leads to more bone', () => {
    const grown = [0, 4, 8, 12].map((up) => ask({ load: press(750, up) }).share);
    grown.slice(1).forEach((share, i) => expect(share).toBeLessThanOrEqual(grown[i] ?? NaN));
    expect(grown[0]).toBeGreaterThan(grown.at(-1) ?? NaN);
  });

  test('while growing, motion never rises from week to week', () => {
    const { weeks } = ask();
    expect(weeks[0]?.places[0]?.bone).toBe('grows');
    weeks.slice(1).forEach(({ motion }, i) => {
      expect(motion).toBeLessThanOrEqual((weeks[i]?.motion ?? NaN) + 1e-12);
    });
  });

  test('pressing in alone is no motion: bone goes with the socket', () => {
    const { weeks } = ask({ load: press(750, 0), weeks: 1 });
    expect(weeks[0]?.motion).toBeLessThan(1e-3);
    const { displacement } = solveSeat({ elements: seat, load: press(750, 0) });
    expect(displacement[2]).toBeLessThan(-0.02);
  });

  test('an overturned seat loses all and says so', () => {
    const loose = { elements: [...bed, ...spring(100, 1)] };
    const { weeks } = ingrowth({ seat: loose, load: press(500, 25), weeks: 4 });
    expect(weeks[0]).toMatchObject({ outcome: 'overturned', motion: Infinity, share: 0 });
  });

  test('which places grow can be told; a place deeper in a tilting peg moves otherwise', () => {
    const spaces = [-6, -12].map((z): SeatElement => ({
      ...(fluted[0] as SeatElement),
      position: [0, 0, z],
    }));
    const elements = [...bed, ...spaces];
    const both = ingrowth({ seat: { elements }, load: press(300, 8), weeks: 1 });
    const [near, deep] = both.weeks[0]?.places ?? [];
    expect(near?.motion).not.toBe(deep?.motion);
    const one = ingrowth({
      seat: { elements, growing: [place + 1] },
      load: press(300, 8),
      weeks: 1,
    });
    expect(one.weeks[0]?.places).toStrictEqual([deep]);
  });

  test('no week: nothing has happened', () => {
    expect(ask({ weeks: 0 })).toStrictEqual({ weeks: [], share: 0, elements: seat });
  });

  test('no place to grow: a share of 0, not NaN', () => {
    expect(ask({ seat: { elements: seat, growing: [] }, weeks: 2 }).share).toBe(0);
  });

  test('shares stay between 0 and the ceiling, whatever the loads and rates', () => {
    fc.assert(
      fc.property(
        fc.array(fc.option(real(0, 400)), { minLength: 1, maxLength: 20 }),
        real(0, 3),
        real(0, 3),
        real(0.1, 1),
        (loads, growth, loss, ceiling) => {
          const result = ingrowth({
            seat: { elements: spring(1000) },
            load: (week) => {
              const newtons = loads[week] ?? null;
              return newtons === null ? null : pull(newtons);
            },
            weeks: loads.length,
            rates: { growth, loss, ceiling },
          });
          for (const share of shares(result)) {
            expect(share).toBeGreaterThanOrEqual(0);
            expect(share).toBeLessThanOrEqual(ceiling);
          }
        },
      ),
    );
  });

  test('the growth law is the differential equation’s', () => {
    const { growth, seed, ceiling } = usualIngrowthRates;
    let share = 0;
    const steps = 10_000;
    for (let i = 0; i < 3 * steps; i++) {
      const from = share + seed;
      share += (growth * from * (1 - from / (ceiling + seed))) / steps;
    }
    const closed = [1, 2, 3].reduce((s) => nextShare(s, 'grows', usualIngrowthRates), 0);
    expectClose(closed, share, { relative: 1e-3 });
  });

  test.each([
    [{ weeks: -1 }, /weeks is -1/],
    [{ weeks: 1.5 }, /weeks is 1\.5; allowed: 0, 1, 2/],
    [{ thresholds: { lower: -0.01, upper: 1 } }, /thresholds\.lower is -0\.01/],
    [{ thresholds: { lower: 0.1, upper: 0.05 } }, /thresholds\.upper is 0\.05/],
    [{ rates: { growth: -1 } }, /rates\.growth is -1/],
    [{ rates: { loss: NaN } }, /rates\.loss is NaN/],
    [{ rates: { ceiling: 1.1 } }, /rates\.ceiling is 1\.1/],
    [{ rates: { seed: 0.8 } }, /rates\.seed is 0\.8/],
    [{ rates: { stiffening: 0.5 } }, /rates\.stiffening is 0\.5/],
    [{ seat: { elements: seat, growing: [1e6] } }, /seat\.growing has 1000000/],
  ] satisfies [Partial<IngrowthQuestion>, RegExp][])('refuses %o', (bad, message) => {
    expect(() => ask(bad)).toThrow(RangeError);
    expect(() => ask(bad)).toThrow(message);
  });

  test('thresholds left out are those of print', () => {
    expect(ask()).toStrictEqual(ask({ thresholds: usualMotionThresholds }));
  });
});
