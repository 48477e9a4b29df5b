import { describe, expect, test } from 'vitest';
import {
  climbAt,
  peakStabilityRatio,
  rimContactTranslation,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';
import { elasticStabilityCurve } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { carriedBy, component, layer, usual } from './polyethylene.ts';

const rim = rimContactTranslation(component, 24);
const { socket, ballRadius, compressiveLoad } = usual;
const question = { socket, ballRadius, compressiveLoad, ...layer };

/** The most by which the elastic ratio misses the rigid one over these translations, under a layer so many times stiffer. */
function worstMiss(ballRadius: number, translations: readonly number[], stiffer: number): number {
  const rows = elasticStabilityCurve({
    ...question,
    ballRadius,
    modulus: question.modulus * stiffer,
    translations,
  });
  return Math.max(
    ...rows.map(({ translation, stabilityRatio }) =>
      Math.abs((stabilityRatio ?? NaN) - stabilityRatioAt(component, ballRadius, translation)),
    ),
  );
}

const series = [1, 1e2, 1e4, 1e6, 1e8];

describe('elasticStabilityCurve: a stiffening layer', () => {
  const inside = [0.2, 0.5, 0.8].map((part) => part * rim);
  const onRim = [2.5, 5, 8, 12, 15];

  test.each([
    ['inside the cup', 24, inside, 1e-6],
    ['over the rim', 24, onRim, 1e-4],
    ['over the rim, a fitting ball', 27, [0.5, 3, 8, 15], 1e-4],
  ] as const)(
    'elasticStabilityCurve: %s it comes to the rigid curve',
    (_, ballRadius, translations, end) => {
      const misses = series.map((stiffer) => worstMiss(ballRadius, translations, stiffer));
      misses.slice(1).forEach((miss, i) => {
        expect(miss).toBeLessThan((misses[i] ?? NaN) / 2);
      });
      expect(misses.at(-1)).toBeLessThan(end);
    },
  );

  test('elasticStabilityCurve: at first rim contact too, more slowly: with the root of the patch’s width', () => {
    const misses = series.map((stiffer) => worstMiss(24, [rim], stiffer));
    misses.slice(1).forEach((miss, i) => {
      // A patch a third as wide for a layer a hundred times stiffer: the miss goes with it.
      expectClose(miss / (misses[i] ?? NaN), 100 ** -0.25, { relative: 0.08 });
    });
    expect(misses.at(-1)).toBeLessThan(1e-3);
  });

  test('elasticStabilityCurve: the peak is lower than rigid, and the softer the lower', () => {
    const translations = Array.from({ length: 60 }, (_, i) => (i * 3 * rim) / 59);
    const peaks = [0.1, 1, 10, 100].map((stiffer) =>
      Math.max(
        ...elasticStabilityCurve({
          ...question,
          modulus: question.modulus * stiffer,
          translations,
        }).map(({ stabilityRatio }) => stabilityRatio ?? NaN),
      ),
    );
    peaks.slice(1).forEach((peak, i) => {
      expect(peak).toBeGreaterThan(peaks[i] ?? NaN);
    });
    expect(peaks.at(-1)).toBeLessThan(peakStabilityRatio(component));
  });

  test('elasticStabilityCurve: work to the crest is load times climb and what the layer has stored', () => {
    const count = 3000;
    const end = 12;
    const translations = Array.from({ length: count + 1 }, (_, i) => (i * end) / count);
    const rows = elasticStabilityCurve({ ...question, translations });
    const work = rows.reduce((sum, { stabilityRatio }, i) => {
      const weight = i === 0 || i === count ? 0.5 : 1;
      return sum + weight * (stabilityRatio ?? NaN) * 500 * (end / count);
    }, 0);
    const energyAndHeight = (translation: number): readonly [number, number] => {
      const contact = carriedBy({ ...usual, translation });
      // ½ p h for each patch: the mean of h² over a cell is a little more than the square of its mean.
      const stored = contact.patches.reduce(
        (sum, { area, pressure }) =>
          sum + (0.5 * area * pressure ** 2 * contact.penetration) / contact.peakPressure,
        0,
      );
      return [stored, contact.ballCentre[2]];
    };
    const [storedAtStart, heightAtStart] = energyAndHeight(0);
    const [storedAtEnd, heightAtEnd] = energyAndHeight(end);
    const gain = 500 * (heightAtEnd - heightAtStart) + storedAtEnd - storedAtStart;
    // The pressure leaves out penetration over radius of curvature, up to 1 % on the rim.
    expectClose(work, gain, { relative: 0.01 });
    expect(heightAtEnd - heightAtStart).toBeLessThan(climbAt(component, 24, end));
  });
});

describe('elasticStabilityCurve: rows', () => {
  test('elasticStabilityCurve: each row is what contactPressure says there', () => {
    const translations = [4, 0, 1.5];
    const rows = elasticStabilityCurve({ ...question, translations });
    rows.forEach((row, i) => {
      const contact = carriedBy({ ...usual, translation: translations[i] ?? NaN });
      expect(row).toStrictEqual({
        translation: translations[i],
        stabilityRatio: contact.sideForce / 500,
        peakPressure: contact.peakPressure,
        rimShare: contact.rimShare,
        state: contact.state,
      });
    });
  });

  test('elasticStabilityCurve: null where the layer cannot carry', () => {
    const [row] = elasticStabilityCurve({ ...question, compressiveLoad: 1e8, translations: [5] });
    expect(row).toStrictEqual({
      translation: 5,
      stabilityRatio: null,
      peakPressure: null,
      rimShare: null,
      state: 'too much for the layer',
    });
  });

  test('elasticStabilityCurve: refuses a translation beyond half the width', () => {
    expect(() => elasticStabilityCurve({ ...question, translations: [0, 15.1] })).toThrow(
      'translation is 15.1; allowed: 0 to 15 mm',
    );
  });
});
