import { describe, expect, test } from 'vitest';
import { factRange, factValue } from '../../../lessons/fact-value.ts';
import * as n from '../../../lessons/08-cement/cements.ts';
import * as m from '../../../lessons/08-cement/measured.ts';
import { doses, halfHours, profiles } from '../../../lessons/08-cement/warming.ts';

describe('what the text says of the measured beside the model', () => {
  test('holes and back take no more than a little over the least that was weighed', () => {
    const [least, most] = factRange('cement-in-sockets');
    const [, widest = NaN] = m.withBack;
    expect(widest).toBeGreaterThan(least);
    expect(widest).toBeLessThan(least + (most - least) / 10);
  });

  test('a thin mantle lies within the sensors’ range, the measured one far beyond it', () => {
    const [low, high] = factRange('keel-warming');
    expect(n.riseOf(n.thin)).toBeGreaterThan(low);
    expect(n.riseOf(n.thin)).toBeLessThan(high);
    expect(n.riseOf(m.measuredMantleHeat)).toBeGreaterThan(1.5 * high);
  });

  test('the camera’s mean is near the ceiling, and its highest beyond', () => {
    expect(Math.abs(factValue('bone-surface-heat') - n.ceiling)).toBeLessThan(3);
    expect(factRange('bone-surface-heat')[1]).toBeGreaterThan(n.ceiling);
  });
});

test('the temperature and the mantles that the text counts are the published ones', () => {
  expect(n.QUOTED).toBe(factValue('bone-heat-limit'));
  expect(m.measuredMantle).toBe(factValue('keel-mantle'));
});

describe('what is drawn', () => {
  test('every row of the measured lies on its axis and says how it was read', () => {
    for (const { from, to, rows } of m.measuredGroups) {
      for (const { value, range, howRead } of rows) {
        const numbers = [...(value === undefined ? [] : [value]), ...(range ?? [])];
        expect(numbers.length).toBeGreaterThan(0);
        for (const number of numbers) expect(number >= from && number <= to).toBe(true);
        expect(['abstract', 'computed']).toContain(howRead);
      }
    }
  });

  test('peaks, times and both criteria rise with the thickness', () => {
    for (const curve of Object.values(doses)) {
      const peaks = curve.map(({ heat }) => heat.peakAtBone);
      expect(peaks).toEqual(peaks.toSorted((a, b) => a - b));
      expect(Math.max(...peaks)).toBeLessThan(n.ceiling);
    }
    for (const of of ['bone', 'skin'] as const) {
      const shares = halfHours.map((each) => each[of]);
      expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    }
  });

  test('profiles begin in the middle of the keel and end in bone', () => {
    for (const { thickness, moments } of profiles) {
      for (const { points } of moments) {
        expect(points[0]?.[0]).toBeCloseTo(-thickness - n.halfOf('keel'), 0);
        expect(points.at(-1)?.[0]).toBeGreaterThan(11);
      }
    }
  });
});
