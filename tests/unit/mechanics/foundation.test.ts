import { describe, expect, test } from 'vitest';
import { foundationModulus } from '../../../sims/mechanics/index.ts';
import { dropForLoad } from '../../../sims/mechanics/foundation-load.ts';
import { expectClose } from '../geometry/close.ts';
import { bed, layer } from './polyethylene.ts';

describe('foundationModulus', () => {
  test('foundationModulus: E(1 − ν) / ((1 + ν)(1 − 2ν) t)', () => {
    expectClose(foundationModulus(layer), bed, { relative: 1e-14 });
    expectClose(foundationModulus({ thickness: 2, modulus: 300, poisson: 0 }), 150, {
      relative: 1e-15,
    });
  });

  test('foundationModulus: no side strain takes a side stress of ν/(1 − ν)', () => {
    // Hooke's law by hand: strain across = (σ − ν·2s)/E with s from (s − ν(s + σ))/E = 0.
    const [modulus, poisson, thickness, pressure] = [690, 0.46, 4, 3];
    const side = (poisson / (1 - poisson)) * pressure;
    const strain = (pressure - 2 * poisson * side) / modulus;
    expectClose(
      foundationModulus({ modulus, poisson, thickness }),
      pressure / (strain * thickness),
      {
        relative: 1e-12,
      },
    );
  });

  test('foundationModulus: from ν = 0.40 to 0.46 it more than doubles', () => {
    const ratio = foundationModulus(layer) / foundationModulus({ ...layer, poisson: 0.4 });
    expectClose(ratio, 2.158, { absolute: 1e-3 });
  });

  test('foundationModulus: up to ν = 0.499 and no further', () => {
    expect(foundationModulus({ ...layer, poisson: 0.499 })).toBeGreaterThan(20 * bed);
    expect(() => foundationModulus({ ...layer, poisson: 0.4991 })).toThrow(
      'poisson is 0.4991; allowed: 0 to 0.499',
    );
  });
});

describe('dropForLoad', () => {
  const laws = [
    ['a power of one', (drop: number) => 3 * drop, (load: number) => load / 3],
    [
      'a power of two and a half',
      (drop: number) => 7 * drop ** 2.5,
      (load: number) => (load / 7) ** 0.4,
    ],
    ['two powers', (drop: number) => drop + drop ** 3, (load: number) => cubicRoot(load)],
  ] as const;

  test.each(laws)('dropForLoad: %s', (_, law, inverse) => {
    for (const load of [1e-12, 1e-3, 1, 500]) {
      let calls = 0;
      const drop = dropForLoad((d) => (calls++, law(d)), load, 1000);
      expectClose(drop ?? NaN, inverse(load), { relative: 1e-9 });
      expect(calls).toBeLessThan(15);
    }
  });

  test('dropForLoad: a law that starts late is still found', () => {
    const drop = dropForLoad((d) => Math.max(0, d - 0.01) ** 2, 1e-6, 10);
    expectClose(drop ?? NaN, 0.011, { relative: 1e-8 });
  });

  test('dropForLoad: a load beyond the limit has none, the limit itself has', () => {
    expect(dropForLoad((d) => d, 10.001, 10)).toBeNull();
    expectClose(dropForLoad((d) => d, 10, 10) ?? NaN, 10, { relative: 1e-10 });
    expect(dropForLoad(() => NaN, 1, 10)).toBeNull();
  });
});

/** x + x³ = load, by halving. */
function cubicRoot(load: number): number {
  let [low, high] = [0, 10];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (middle + middle ** 3 < load) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
