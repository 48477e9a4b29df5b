import { describe, expect, test } from 'vitest';
import { sphericalSocket } from '../../../sims/geometry/index.ts';
import {
  foundationModulus,
  hertzContact,
  leastThinLayer,
  type HertzContact,
} from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { layerContact } from './layer-oracle.ts';
import { carriedBy, layer } from './polyethylene.ts';

const usual = { ballRadius: 24, socketRadius: 27, modulus: 690, poisson: 0.46, load: 500 };

/** A contact of a given patch radius over thickness as the exact layer has it, and what both formulas make of its load. */
function besideExact(
  patchToThickness: number,
  poisson: number,
): { readonly contact: HertzContact; readonly hertz: number; readonly thinLayer: number } {
  // A ball so large that the patch is small against it, however wide against the layer.
  const [ballRadius, thickness, modulus] = [1e4, 1, 1];
  const exact = layerContact({
    contactRadius: patchToThickness * thickness,
    thickness,
    modulus,
    poisson,
    effectiveRadius: ballRadius,
  });
  const contact = hertzContact({
    ballRadius,
    socketRadius: Infinity,
    modulus,
    poisson,
    thickness,
    load: exact.load,
  });
  const off = (peak: number | undefined): number => (peak ?? NaN) / exact.peakPressure - 1;
  return {
    contact,
    hertz: off(contact.hertz?.peakPressure),
    thinLayer: off(contact.thinLayer?.peakPressure),
  };
}

describe('hertzContact', () => {
  test('hertzContact: a³ = 3FRe/4E*, p₀ = 3F/2πa²', () => {
    const { hertz, contactRadius, peakPressure, effectiveRadius } = hertzContact(usual);
    const a = Math.cbrt((3 * 500 * 216 * (1 - 0.46 ** 2)) / (4 * 690));
    expectClose(effectiveRadius ?? NaN, 216, { relative: 1e-12 });
    expectClose(contactRadius ?? NaN, a, { relative: 1e-12 });
    expectClose(peakPressure ?? NaN, (3 * 500) / (2 * Math.PI * a ** 2), { relative: 1e-12 });
    expectClose(hertz?.approach ?? NaN, a ** 2 / 216, { relative: 1e-12 });
    expectClose(hertz?.meanPressure ?? NaN, 500 / (Math.PI * a ** 2), { relative: 1e-12 });
  });

  test('hertzContact: the thin layer beside it is what the map gives for a small patch', () => {
    const { thinLayer } = hertzContact({ ...usual, load: 20, thickness: 4 });
    const map = carriedBy({
      socket: sphericalSocket({ curvatureRadius: 27, width: 30 }),
      ballRadius: 24,
      ...layer,
      compressiveLoad: 20,
      translation: 0,
    });
    expectClose(map.peakPressure, thinLayer?.peakPressure ?? NaN, { relative: 2e-3 });
    expectClose(map.contactArea, Math.PI * (thinLayer?.contactRadius ?? NaN) ** 2, {
      relative: 2e-3,
    });
    expect(hertzContact(usual).thinLayer).toBeNull();
  });

  test('hertzContact: a conforming pair has numbers in neither form, and is told so', () => {
    for (const ballRadius of [27, 27 * (1 - 1e-12)]) {
      const contact = hertzContact({ ...usual, ballRadius, thickness: 4 });
      expect(contact).toMatchObject({
        effectiveRadius: null,
        hertz: null,
        thinLayer: null,
        contactRadius: null,
        peakPressure: null,
      });
      expect(contact.domain.believe).toBe('neither');
      expect(contact.domain.words).toContain('fits its socket');
    }
  });

  test('hertzContact: a flat block is Re = r', () => {
    const { effectiveRadius, domain } = hertzContact({ ...usual, socketRadius: Infinity });
    expect(effectiveRadius).toBe(24);
    expect(domain.patchToThickness).toBe(0);
    expect(domain.isHalfSpace).toBe(true);
  });

  const refused: readonly (readonly [argument: string, value: unknown])[] = [
    ...[0, -24, 27.01, NaN, Infinity, null].map((value) => ['ballRadius', value] as const),
    ...[0, -27, NaN, null].map((value) => ['socketRadius', value] as const),
    ...[0, -1, NaN, Infinity, null].map((value) => ['modulus', value] as const),
    ...[-0.1, 0.5, NaN, null].map((value) => ['poisson', value] as const),
    ...[0, -1, NaN, Infinity, null].map((value) => ['load', value] as const),
    ...[0, -1, NaN, Infinity, null].map((value) => ['thickness', value] as const),
  ];
  test.each(refused)('hertzContact: refuses %s %j', (argument, value) => {
    const ask = (): unknown => hertzContact({ ...usual, thickness: 4, [argument]: value });
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(`${argument} is ${String(value)}; allowed: `);
  });
});

describe('hertzContact: domain, against the exact elastic layer', () => {
  test('domain: the exact layer is Hertz’s block for a small patch, and the bed of springs for a wide one', () => {
    const small = besideExact(0.05, 0.3);
    expectClose(small.hertz, 0, { absolute: 1e-3 });
    const wide = besideExact(8, 0.3);
    expectClose(wide.thinLayer, 0, { absolute: 5e-3 });
  });

  test.each([0, 0.25, 0.4, 0.46, 0.49])(
    'domain: Hertz is believed only within a tenth, ν = %d',
    (poisson) => {
      for (const ratio of [0.05, 0.2, 0.4, 0.5, 0.57, 0.7, 1, 2]) {
        const { contact, hertz } = besideExact(ratio, poisson);
        if (contact.domain.isHalfSpace) expect(Math.abs(hertz)).toBeLessThan(0.1);
        expect(contact.domain.isHalfSpace).toBe(ratio < 0.59);
      }
    },
  );

  test.each([0, 0.25, 0.35, 0.4, 0.46])(
    'domain: the thin layer is believed only within a tenth, ν = %d',
    (poisson) => {
      const least = leastThinLayer(poisson);
      for (const times of [0.1, 0.5, 0.8, 1.1, 1.4]) {
        const { contact, thinLayer } = besideExact(times * least, poisson);
        if (contact.domain.isThinLayer) expect(Math.abs(thinLayer)).toBeLessThan(0.1);
      }
      expect(besideExact(1.4 * least, poisson).contact.domain.believe).toBe('thin layer');
      expect(besideExact(0.55 * least, poisson).contact.domain.isThinLayer).toBe(false);
    },
  );

  test('domain: the usual plastic under the usual load is in neither, with the truth between the two', () => {
    const { domain } = hertzContact({ ...usual, thickness: 4 });
    expect(domain.believe).toBe('neither');
    const { hertz, thinLayer } = besideExact(1, 0.46);
    expectClose(thinLayer, 0.59, { absolute: 0.01 });
    expectClose(hertz, -0.23, { absolute: 0.01 });
  });

  test('domain: the nearer ν is to one half, the wider a patch must be', () => {
    const least = [0, 0.2, 0.3, 0.4, 0.45, 0.48, 0.499].map(leastThinLayer);
    least.slice(1).forEach((value, i) => {
      expect(value).toBeGreaterThanOrEqual(least[i] ?? NaN);
    });
    expectClose(least.at(-1) ?? NaN, 74.5, { relative: 0.01 });
  });

  test('domain: a wide patch against the ball is in neither', () => {
    const { domain } = hertzContact({ ...usual, socketRadius: 24.2, load: 3000, thickness: 1 });
    expect(domain.isSmallPatch).toBe(false);
    expect(domain.believe).toBe('neither');
  });

  test('domain: where a parabola stands for the sphere the closed form is within 5 % of the map', () => {
    for (const ballRadius of [15, 20, 24, 26]) {
      const bed = foundationModulus(layer);
      const effective = ballRadius / (1 - ballRadius / 27);
      const approach = (0.3 * ballRadius) ** 2 / (2 * effective);
      const load = Math.PI * bed * effective * approach ** 2;
      const map = carriedBy({
        socket: sphericalSocket({ curvatureRadius: 27, width: 40 }),
        ballRadius,
        ...layer,
        compressiveLoad: load,
        translation: 0,
      });
      expectClose(map.peakPressure, bed * approach, { relative: 0.05 });
    }
  });
});
