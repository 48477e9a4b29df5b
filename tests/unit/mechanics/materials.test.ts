import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { materials, type Material, type Quantity } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';

const lessons = (name: string): string =>
  readFileSync(new URL(`../../../lessons/${name}`, import.meta.url), 'utf8');
const sources = JSON.parse(lessons('sources.json')) as readonly {
  readonly id: string;
  readonly custom: { readonly howRead: string; readonly usedFor: string };
}[];
const facts = parse(lessons('facts.yaml')) as readonly {
  readonly id: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}[];

const isQuantity = (part: unknown): part is Quantity => typeof part === 'object';
const all = Object.entries(materials).flatMap(([name, material]: [string, Material]) =>
  Object.entries(material).flatMap(([property, part]) =>
    isQuantity(part) ? [[`${name}: ${property}`, part] as const] : [],
  ),
);

describe('materials', () => {
  test.each(all)('%s: lies in its range and says where it is from', (_, quantity) => {
    const { value, low = value, high = value, howRead, sources: ids, note } = quantity;
    expect(value).toBeGreaterThan(0);
    expect(low).toBeLessThanOrEqual(value);
    expect(high).toBeGreaterThanOrEqual(value);
    const read = ids.map((id) => sources.find((source) => source.id === id)?.custom);
    expect(read.every((source) => source?.usedFor === 'numbers')).toBe(true);
    if (howRead === 'teaching value') expect(note ?? '').not.toBe('');
    else expect(read[0]?.howRead).toBe(howRead);
  });

  test.each(Object.values(materials).map((material) => [material.what, material] as const))(
    '%s: a material that can be',
    (_, { poissonRatio, yieldStrength, tensileStrength, youngsModulus, ...thermal }) => {
      expect(poissonRatio.value).toBeLessThan(0.5);
      expect(tensileStrength.value).toBeLessThan(youngsModulus.value / 5);
      expect(yieldStrength?.value ?? 0).toBeLessThanOrEqual(tensileStrength.value);
      // Solids hold between 1 and 5 joules for each cubic centimetre and kelvin.
      expect(thermal.volumetricHeat.value).toBeGreaterThan(1e-3);
      expect(thermal.volumetricHeat.value).toBeLessThan(5e-3);
    },
  );

  test('units: conductivity and heat fit each other in millimetres', () => {
    // Wet tissue spreads heat at about 0.1 mm² a second, metals at some 3.
    const spread = ({ conductivity, volumetricHeat }: Material): number =>
      conductivity.value / volumetricHeat.value;
    expectClose(spread(materials['cancellous bone']), 0.096, { relative: 0.01 });
    // The data page prints 3.4 to 3.5.
    expectClose(spread(materials['cobalt-chromium']), 3.45, { absolute: 0.05 });
  });

  test('the socket’s plastic is the one the lessons tell of', () => {
    const { youngsModulus, poissonRatio } = materials.polyethylene;
    const fact = (id: string): (typeof facts)[number] | undefined =>
      facts.find((entry) => entry.id === id);
    expect(fact('polyethylene-modulus')).toMatchObject({
      value: youngsModulus.value,
      low: youngsModulus.low,
      high: youngsModulus.high,
    });
    expect(fact('polyethylene-poisson')?.value).toBe(poissonRatio.value);
  });

  test('the bone of the socket is the one the lessons tell of', () => {
    const { low, high } = materials['cancellous bone'].youngsModulus;
    expect(facts.find(({ id }) => id === 'socket-bone-modulus-along')?.value).toBe(low);
    expect(facts.find(({ id }) => id === 'socket-bone-modulus-across')?.value).toBe(high);
  });
});
