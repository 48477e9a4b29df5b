import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dundurs, type ElasticMaterial } from '../../../sims/mechanics/index.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { absolute: 1e-12 };

const material: fc.Arbitrary<ElasticMaterial> = fc.record({
  youngsModulus: real(-3, 6).map((power) => 10 ** power),
  poissonRatio: real(0, 0.5),
});
const rubber = { youngsModulus: 1, poissonRatio: 0.5 };
const steel = { youngsModulus: 210_000, poissonRatio: 0.3 };

describe('dundurs', () => {
  test('equals have none of it', () => {
    fc.assert(
      fc.property(material, (same) => {
        expect(dundurs(same, same)).toStrictEqual({ alpha: 0, beta: 0, epsilon: 0 });
      }),
    );
  });

  test('α is the step of the plane-strain moduli', () => {
    const stiff = ({ youngsModulus, poissonRatio }: ElasticMaterial): number =>
      youngsModulus / (1 - poissonRatio ** 2);
    fc.assert(
      fc.property(material, material, (one, two) => {
        const [first, second] = [stiff(one), stiff(two)];
        expectClose(dundurs(one, two).alpha, (first - second) / (first + second), EXACT);
      }),
    );
  });

  test('α vanishes for equal plane-strain moduli, whatever ν', () => {
    const at = (poissonRatio: number): ElasticMaterial => ({
      youngsModulus: 1000 * (1 - poissonRatio ** 2),
      poissonRatio,
    });
    expectClose(dundurs(at(0.1), at(0.45)).alpha, 0, EXACT);
  });

  test('changing the two over changes every sign', () => {
    fc.assert(
      fc.property(material, material, (one, two) => {
        const [there, back] = [dundurs(one, two), dundurs(two, one)];
        for (const part of ['alpha', 'beta', 'epsilon'] as const) {
          expectClose(there[part], -back[part], EXACT);
        }
      }),
    );
  });

  test('α and β stay in their parallelogram', () => {
    fc.assert(
      fc.property(material, material, (one, two) => {
        const { alpha, beta } = dundurs(one, two);
        expect(Math.abs(alpha)).toBeLessThanOrEqual(1);
        expect(beta).toBeGreaterThanOrEqual((alpha - 1) / 4 - 1e-12);
        expect(beta).toBeLessThanOrEqual((alpha + 1) / 4 + 1e-12);
      }),
    );
  });

  test('the unit of the moduli does not matter', () => {
    const scaled = (by: number): ElasticMaterial => ({ ...steel, youngsModulus: 210_000 * by });
    const other = (by: number): ElasticMaterial => ({ ...rubber, youngsModulus: by });
    const [large, small] = [dundurs(scaled(1e300), other(1e300)), dundurs(scaled(1), other(1))];
    expectClose(large.alpha, small.alpha, EXACT);
    expectClose(large.beta, small.beta, EXACT);
  });

  test('rigid on soft: α → 1, β → (1 − 2ν)/2(1 − ν)', () => {
    for (const poissonRatio of [0, 0.2, 0.46, 0.5]) {
      const { alpha, beta } = dundurs(
        { youngsModulus: 1e15, poissonRatio: 0.3 },
        { youngsModulus: 1, poissonRatio },
      );
      expectClose(alpha, 1, EXACT);
      expectClose(beta, (1 - 2 * poissonRatio) / (2 * (1 - poissonRatio)), EXACT);
    }
  });

  test('ε is the logarithm of β', () => {
    const { beta, epsilon } = dundurs(steel, { youngsModulus: 3000, poissonRatio: 0.35 });
    expect(beta).toBeGreaterThan(0.1);
    expectClose(epsilon, Math.log((1 - beta) / (1 + beta)) / (2 * Math.PI), EXACT);
    // Two incompressible halves, or a rigid one on an incompressible one: β = 0.
    expectClose(dundurs({ ...steel, poissonRatio: 0.5 }, rubber).epsilon, 0, EXACT);
  });

  test.each([
    [{ youngsModulus: 0, poissonRatio: 0.3 }, /first\.youngsModulus is 0/],
    [{ youngsModulus: NaN, poissonRatio: 0.3 }, /first\.youngsModulus is NaN/],
    [{ youngsModulus: 1, poissonRatio: 0.51 }, /first\.poissonRatio is 0\.51; allowed: 0 to 0\.5/],
    [{ youngsModulus: 1, poissonRatio: -0.1 }, /first\.poissonRatio is -0\.1/],
  ])('refuses %o', (bad, message) => {
    expect(() => dundurs(bad, steel)).toThrow(RangeError);
    expect(() => dundurs(bad, steel)).toThrow(message);
    expect(() => dundurs(steel, bad)).toThrow(/second\./);
  });
});
