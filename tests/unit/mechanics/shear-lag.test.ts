import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shearLag, type ShearLag, type ShearLagQuestion } from '../../../sims/mechanics/index.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { relative: 1e-12 };
/** Finite differences at 4,000 places. */
const DISCRETE = { relative: 2e-4 };
/** Trapezia over the places given. */
const TRAPEZIA = { relative: 3e-3 };

const usual: ShearLagQuestion = {
  overlap: 25,
  adherends: [
    { modulus: 70_000, thickness: 2 },
    { modulus: 70_000, thickness: 2 },
  ],
  adhesive: { shearModulus: 1000, thickness: 0.2 },
  load: 1000,
  width: 20,
};
const unequal: ShearLagQuestion = {
  ...usual,
  adherends: [
    { modulus: 70_000, thickness: 2 },
    { modulus: 2500, thickness: 3 },
  ],
};

const power = (low: number, high: number) => real(low, high).map((exponent) => 10 ** exponent);
const plate = fc.record({ modulus: power(0, 6), thickness: power(-1, 1.5) });
const joints: fc.Arbitrary<ShearLagQuestion> = fc.record({
  overlap: power(-1, 3),
  adherends: fc.tuple(plate, plate),
  adhesive: fc.record({ shearModulus: power(-1, 5), thickness: power(-2, 1) }),
  load: real(-1000, 1000),
  width: power(0, 2),
});

const stresses = ({ shear }: ShearLag): number[] => shear.map(({ stress }) => stress);

function carried({ shear }: ShearLag, width: number): number {
  return shear.slice(1).reduce((sum, { position, stress }, i) => {
    const before = shear[i];
    if (before === undefined) return NaN;
    return sum + (width * (position - before.position) * (stress + before.stress)) / 2;
  }, 0);
}

/**
 * The same joint by finite differences: the pull T in the first plate obeys T″ = ω²T − (G/t)P/E₂t₂, T = P at the start, 0
 * at the end; solved by elimination, without any closed form.
 */
function byDifferences(question: ShearLagQuestion, cells: number): number[] {
  const { overlap, adherends, adhesive, load, width } = question;
  const [one, two] = adherends.map(({ modulus, thickness }) => 1 / (modulus * thickness));
  const stiff = adhesive.shearModulus / adhesive.thickness;
  const step = overlap / cells;
  const diagonal = -2 - step ** 2 * stiff * ((one ?? NaN) + (two ?? NaN));
  const right = -(step ** 2) * stiff * (two ?? NaN) * load;
  const up = new Float64Array(cells + 1);
  const value = new Float64Array(cells + 1);
  value[0] = load;
  for (let i = 1; i < cells; i++) {
    const pivot = diagonal - (up[i - 1] ?? 0);
    up[i] = 1 / pivot;
    value[i] = (right - (value[i - 1] ?? 0)) / pivot;
  }
  const pull = new Float64Array(cells + 1);
  pull[0] = load;
  for (let i = cells - 1; i > 0; i--) pull[i] = (value[i] ?? 0) - (up[i] ?? 0) * (pull[i + 1] ?? 0);
  return Array.from(pull.slice(1), (at, i) => ((pull[i] ?? 0) - at) / (step * width));
}

/** Stress of a joint at a place between those given. */
function stressAt({ shear }: ShearLag, position: number): number {
  const after = shear.findIndex((place) => place.position >= position);
  const [before, next] = [shear[Math.max(0, after - 1)], shear[after]];
  if (before === undefined || next === undefined) return NaN;
  const share = (position - before.position) / (next.position - before.position || 1);
  return before.stress + share * (next.stress - before.stress);
}

describe('shearLag', () => {
  test.each([
    ['equal plates', usual],
    ['unequal plates', unequal],
    [
      'a stiff plate second',
      { ...unequal, adherends: [unequal.adherends[1], unequal.adherends[0]] },
    ],
    ['a soft layer', { ...unequal, adhesive: { shearModulus: 1, thickness: 1 } }],
  ] satisfies [string, ShearLagQuestion][])('%s: agrees with finite differences', (_, joint) => {
    const cells = 4000;
    const discrete = byDifferences(joint, cells);
    const closed = shearLag(joint);
    for (const i of [0, 1, 10, 400, 2000, 3600, 3998, 3999]) {
      const position = ((i + 0.5) * joint.overlap) / cells;
      const tolerance = { absolute: 1e-3 * closed.mean, ...DISCRETE };
      expectClose(stressAt(closed, position), discrete[i] ?? NaN, tolerance);
    }
  });

  test('carries the load', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        expectClose(carried(shearLag(joint), joint.width), joint.load, TRAPEZIA);
      }),
    );
  });

  test('the peak is at an end and is the one told', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        const lag = shearLag(joint);
        const sizes = stresses(lag).map(Math.abs);
        const peak = Math.max(...sizes);
        expectClose(peak, lag.peakToMean * Math.abs(lag.mean), EXACT);
        expect(Math.max(sizes[0] ?? NaN, sizes.at(-1) ?? NaN)).toBe(peak);
        expect(lag.peakToMean).toBeGreaterThanOrEqual(1 - 1e-12);
      }),
    );
  });

  test('no stress points the wrong way, wherever the joint is long', () => {
    fc.assert(
      fc.property(joints, (joint) => {
        for (const stress of stresses(shearLag(joint))) {
          expect(stress * Math.sign(joint.load)).toBeGreaterThanOrEqual(-1e-9 * Math.abs(stress));
        }
      }),
    );
  });

  test('equal plates: the same from both ends', () => {
    const sizes = stresses(shearLag(usual));
    sizes.forEach((stress, i) => expectClose(stress, sizes.at(-1 - i) ?? NaN, EXACT));
  });

  test('changing the plates over turns the picture round', () => {
    const there = stresses(shearLag(unequal));
    const [first, second] = unequal.adherends;
    const back = stresses(shearLag({ ...unequal, adherends: [second, first] }));
    there.forEach((stress, i) => expectClose(stress, back.at(-1 - i) ?? NaN, EXACT));
  });

  test('the peak is where the more yielding plate is pulled', () => {
    const sizes = stresses(shearLag(unequal));
    expect(sizes.at(-1)).toBeGreaterThan(3 * (sizes[0] ?? NaN));
  });

  test('short or soft: the mean everywhere', () => {
    const lag = shearLag({ ...usual, adhesive: { shearModulus: 1e-6, thickness: 5 } });
    expectClose(lag.peakToMean, 1, { absolute: 1e-9 });
    for (const stress of stresses(lag)) expectClose(stress, lag.mean, { relative: 1e-9 });
  });

  test('long: the peak no longer falls with more length, and nothing overflows', () => {
    const at = (overlap: number): ShearLag => shearLag({ ...usual, overlap });
    const peak = (lag: ShearLag): number => lag.peakToMean * lag.mean;
    expectClose(peak(at(1e3)), peak(at(1e5)), { relative: 1e-9 });
    // Of a joint without end: Pω/2b, from the closed form.
    const { transferLength } = at(1e3);
    expectClose(peak(at(1e5)), 1000 / 20 / (2 * transferLength), { relative: 1e-9 });
    for (const stress of stresses(at(1e9))) expect(Number.isFinite(stress)).toBe(true);
    expect(stresses(at(1e5))[200]).toBe(0);
  });

  test('places run from 0 to the overlap, closer near the ends', () => {
    const { shear } = shearLag(usual);
    const places = shear.map(({ position }) => position);
    expect(places[0]).toBe(0);
    expectClose(places.at(-1) ?? NaN, usual.overlap, EXACT);
    expect([...places].sort((a, b) => a - b)).toStrictEqual(places);
    expect((places[1] ?? NaN) - (places[0] ?? NaN)).toBeLessThan(usual.overlap / 1000);
  });

  test('no load: no stress', () => {
    expect(stresses(shearLag({ ...usual, load: 0 })).every((stress) => stress === 0)).toBe(true);
  });

  test.each([
    [{ overlap: 0 }, /overlap is 0/],
    [{ width: -1 }, /width is -1/],
    [{ load: Infinity }, /load is Infinity/],
    [{ adhesive: { shearModulus: 0, thickness: 1 } }, /adhesive\.shearModulus is 0/],
    [{ adhesive: { shearModulus: 1, thickness: NaN } }, /adhesive\.thickness is NaN/],
    [
      {
        adherends: [
          { modulus: 1, thickness: 1 },
          { modulus: 0, thickness: 1 },
        ],
      },
      /adherends\[1\]\.modulus is 0/,
    ],
  ] satisfies [Partial<ShearLagQuestion>, RegExp][])('refuses %o', (bad, message) => {
    const ask = (): ShearLag => shearLag({ ...usual, ...bad });
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(message);
  });
});
