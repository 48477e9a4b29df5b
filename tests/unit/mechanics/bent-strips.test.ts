import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bilayerBending,
  bimetalCurvature,
  type BentLayer,
  type BilayerBending,
  type BilayerQuestion,
  type BimetalQuestion,
} from '../../../sims/mechanics/index.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { relative: 1e-10 };

const power = (low: number, high: number) => real(low, high).map((exponent) => 10 ** exponent);
const strips: fc.Arbitrary<BimetalQuestion> = fc.record({
  thicknesses: fc.tuple(power(-2, 2), power(-2, 2)),
  moduli: fc.tuple(power(0, 6), power(0, 6)),
  mismatchStrain: real(-0.01, 0.01),
});
const layer = fc.record({ thickness: power(-1, 2), modulus: power(0, 6), width: power(-1, 2) });
const beams: fc.Arbitrary<BilayerQuestion> = fc.record({
  layers: fc.tuple(layer, layer),
  moment: real(-1e4, 1e4),
  shearForce: real(-1e3, 1e3),
});

/**
 * The bimetal strip by least energy: strain e₀ + κy through both layers, the second with a strain of its own. The energy
 * is summed in thin fibres and its least place found from two linear equations; no closed form.
 */
function leastEnergyCurvature({ thicknesses, moduli, mismatchStrain }: BimetalQuestion): number {
  const fibres = 2000;
  let [a, b, d, p, q] = [0, 0, 0, 0, 0];
  [0, 1].forEach((which) => {
    const thickness = thicknesses[which] ?? NaN;
    const bottom = which === 0 ? 0 : thicknesses[0];
    const free = which === 0 ? 0 : mismatchStrain;
    for (let i = 0; i < fibres; i++) {
      const y = bottom + ((i + 0.5) * thickness) / fibres;
      const weight = ((moduli[which] ?? NaN) * thickness) / fibres;
      a += weight;
      b += weight * y;
      d += weight * y * y;
      p += weight * free;
      q += weight * free * y;
    }
  });
  return (a * q - b * p) / (a * d - b * b);
}

describe('bimetalCurvature', () => {
  test.each([
    [{ thicknesses: [1, 1], moduli: [200_000, 100_000], mismatchStrain: 1e-3 }],
    [{ thicknesses: [0.3, 2], moduli: [110_000, 900], mismatchStrain: -2e-3 }],
    [{ thicknesses: [4, 1], moduli: [690, 220_000], mismatchStrain: 5e-3 }],
  ] satisfies [BimetalQuestion][])('%o: the strain of least energy', (strip) => {
    expectClose(bimetalCurvature(strip), leastEnergyCurvature(strip), { relative: 1e-5 });
  });

  test('Timoshenko’s form with its ratios', () => {
    fc.assert(
      fc.property(strips, ({ thicknesses, moduli, mismatchStrain }) => {
        const [m, n] = [thicknesses[0] / thicknesses[1], moduli[0] / moduli[1]];
        const height = thicknesses[0] + thicknesses[1];
        const bracket = 3 * (1 + m) ** 2 + (1 + m * n) * (m ** 2 + 1 / (m * n));
        const printed = (6 * mismatchStrain * (1 + m) ** 2) / (height * bracket);
        expectClose(bimetalCurvature({ thicknesses, moduli, mismatchStrain }), printed, EXACT);
      }),
    );
  });

  test('turned over it bends the other way round', () => {
    fc.assert(
      fc.property(strips, ({ thicknesses, moduli, mismatchStrain }) => {
        const turned = bimetalCurvature({
          thicknesses: [thicknesses[1], thicknesses[0]],
          moduli: [moduli[1], moduli[0]],
          mismatchStrain: -mismatchStrain,
        });
        expectClose(bimetalCurvature({ thicknesses, moduli, mismatchStrain }), -turned, EXACT);
      }),
    );
  });

  test('a film on a thick base: Stoney’s form', () => {
    const film = { thicknesses: [1e-4, 1], moduli: [200_000, 100_000] } as const;
    const stoney = (6 * 200_000 * 1e-4 * 1e-3) / (100_000 * 1);
    expectClose(bimetalCurvature({ ...film, mismatchStrain: 1e-3 }), stoney, { relative: 1e-3 });
  });

  test('no mismatch: straight', () => {
    expect(bimetalCurvature({ thicknesses: [1, 2], moduli: [3, 4], mismatchStrain: 0 })).toBe(0);
  });

  test.each([
    [{ thicknesses: [0, 1], moduli: [1, 1], mismatchStrain: 0 }, /thicknesses\[0\] is 0/],
    [{ thicknesses: [1, 1], moduli: [1, -1], mismatchStrain: 0 }, /moduli\[1\] is -1/],
    [{ thicknesses: [1, 1], moduli: [1, 1], mismatchStrain: NaN }, /mismatchStrain is NaN/],
  ] satisfies [BimetalQuestion, RegExp][])('refuses %o', (bad, message) => {
    expect(() => bimetalCurvature(bad)).toThrow(RangeError);
    expect(() => bimetalCurvature(bad)).toThrow(message);
  });
});

type Bad = Partial<BentLayer & Pick<BilayerQuestion, 'moment' | 'shearForce'>>;

/** Force, moment about the lower face and first moment above the joint, summed in thin fibres. */
function sums({ layers }: BilayerQuestion, { stresses }: BilayerBending) {
  const fibres = 1000;
  let [force, moment] = [0, 0];
  layers.forEach(({ thickness, width }, which) => {
    const bottom = which === 0 ? 0 : layers[0].thickness;
    const stress = stresses[which];
    for (let i = 0; i < fibres; i++) {
      const share = (i + 0.5) / fibres;
      const at = (stress?.bottom ?? NaN) * (1 - share) + (stress?.top ?? NaN) * share;
      const area = (thickness * width) / fibres;
      force += at * area;
      moment -= at * area * (bottom + share * thickness);
    }
  });
  return { force, moment };
}

describe('bilayerBending', () => {
  test('the stresses add up to no force and to the moment', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const bent = bilayerBending(beam);
        const { force, moment } = sums(beam, bent);
        const [one, two] = beam.layers;
        const size = Math.abs(beam.moment);
        expectClose(moment, beam.moment, { relative: 1e-4, absolute: 1e-6 * size });
        expectClose(force * (one.thickness + two.thickness), 0, { absolute: 1e-4 * size + 1e-9 });
      }),
      { numRuns: 60 },
    );
  });

  test('strain runs through the joint without a step', () => {
    fc.assert(
      fc.property(beams, (beam) => {
        const { stresses } = bilayerBending(beam);
        const [one, two] = beam.layers;
        const [below, above] = [stresses[0].top / one.modulus, stresses[1].bottom / two.modulus];
        expectClose(below, above, { relative: 1e-9, absolute: 1e-15 });
      }),
    );
  });

  test('equal layers are one beam', () => {
    const half = { thickness: 2, modulus: 700, width: 5 };
    const bent = bilayerBending({ layers: [half, half], moment: 100, shearForce: 40 });
    expectClose(bent.neutralAxis, 2, EXACT);
    expectClose(bent.rigidity, (700 * 5 * 4 ** 3) / 12, EXACT);
    expectClose(bent.stresses[0].bottom, (100 * 6) / (5 * 4 ** 2), EXACT);
    expectClose(bent.stresses[1].top, (-100 * 6) / (5 * 4 ** 2), EXACT);
    // 3V/2A in the middle of a rectangle.
    expectClose(bent.jointShear, (1.5 * 40) / (5 * 4), EXACT);
  });

  test('the moment held by a bimetal strip that is kept straight bends it so', () => {
    // Held straight, the longer layer is pressed by EΔε; letting go is bending by what held it.
    fc.assert(
      fc.property(strips, ({ thicknesses, moduli, mismatchStrain }) => {
        const [lower, upper] = [
          { thickness: thicknesses[0], modulus: moduli[0], width: 1 },
          { thickness: thicknesses[1], modulus: moduli[1], width: 1 },
        ];
        const [below, above] = [moduli[0] * thicknesses[0], moduli[1] * thicknesses[1]];
        // From the middle of the longer layer to the neutral axis; no difference of lengths that are nearly alike.
        const arm = (((thicknesses[0] + thicknesses[1]) / 2) * below) / (below + above);
        const moment = -above * mismatchStrain * arm;
        const { curvature } = bilayerBending({ layers: [lower, upper], moment });
        expectClose(-curvature, bimetalCurvature({ thicknesses, moduli, mismatchStrain }), {
          relative: 1e-6,
        });
      }),
    );
  });

  test('a layer that hardly resists leaves the other alone', () => {
    const bent = bilayerBending({
      layers: [
        { thickness: 3, modulus: 1000, width: 10 },
        { thickness: 1, modulus: 1e-9, width: 10 },
      ],
      moment: 500,
    });
    expectClose(bent.neutralAxis, 1.5, { relative: 1e-9 });
    expectClose(bent.rigidity, (1000 * 10 * 27) / 12, { relative: 1e-9 });
  });

  test('nothing bent: nothing strained, and no −0', () => {
    const half = { thickness: 2, modulus: 700, width: 5 };
    const { curvature, stresses } = bilayerBending({ layers: [half, half], moment: 0 });
    expect(curvature).toBe(0);
    expect(stresses).toStrictEqual([
      { bottom: 0, top: 0 },
      { bottom: 0, top: 0 },
    ]);
  });

  test.each([
    [{ moment: NaN }, /moment is NaN/],
    [{ shearForce: Infinity }, /shearForce is Infinity/],
    [{ thickness: 0 }, /layers\[0\]\.thickness is 0/],
    [{ modulus: -1 }, /layers\[0\]\.modulus is -1/],
    [{ width: 0 }, /layers\[0\]\.width is 0/],
  ] satisfies [Bad, RegExp][])(
    'refuses %o',
    ({ moment = 1, shearForce = 0, ...bad }: Bad, message) => {
      const sound = { thickness: 2, modulus: 700, width: 5 };
      const ask = (): BilayerBending =>
        bilayerBending({ layers: [{ ...sound, ...bad }, sound], moment, shearForce });
      expect(ask).toThrow(RangeError);
      expect(ask).toThrow(message);
    },
  );
});
