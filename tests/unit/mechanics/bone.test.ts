import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import {
  boneNames,
  boneOf,
  bones,
  boneStrength,
  boneWithModulus,
  corticalModulus,
  flatBed,
  peg,
  type BoneName,
} from '../../../sims/mechanics/index.ts';

const read = (name: string): string =>
  readFileSync(new URL(`../../../lessons/${name}`, import.meta.url), 'utf8');
const sources = new Set((JSON.parse(read('sources.json')) as { id: string }[]).map(({ id }) => id));
const facts = new Map(
  (
    parse(read('facts.yaml')) as readonly {
      id: string;
      value?: number;
      sd?: number;
      low?: number;
      high?: number;
      source?: string;
      howRead: string;
    }[]
  ).map((fact) => [fact.id, fact]),
);

test.each(boneNames)(
  '%s: its numbers have a source and are above 0, and builders take it',
  (name) => {
    const entry = bones[name];
    for (const number of [entry.modulus, entry.strength, entry.density]) {
      if (number === undefined) continue;
      expect(number.value).toBeGreaterThan(0);
      expect(sources).toContain(number.source);
    }
    const bone = boneOf(name);
    expect(bone).toMatchObject({ modulus: entry.modulus.value, strength: entry.strength.value });
    expect(boneWithModulus(bone.modulus)).toBe(name);
    const outline = { kind: 'circle', width: 28 } as const;
    const bed = flatBed(outline, { layer: { ...bone, thickness: 6 }, level: 0, elements: 50 });
    expect(bed.length).toBeGreaterThan(30);
    const [axial] = peg({ x: 0, y: 0, diameter: 5, length: 10, kind: 'in-grown', bone });
    expect(axial?.normalStiffness).toBeGreaterThan(0);
  },
);

describe('the same numbers as in the list of facts', () => {
  test.each([
    ['socket-bone-modulus-across', bones['bone, across the face'].modulus],
    ['socket-bone-modulus-along', bones['bone, along the face'].modulus],
    ['socket-bone-strength', bones['bone, across the face'].strength],
    ['foam-modulus-grade-15', bones['foam grade 15'].modulus],
    ['foam-modulus-grade-20', bones['foam grade 20'].modulus],
  ])('%s', (id, { value, sd, source, howRead }) => {
    expect(facts.get(id)).toMatchObject({ value, source, howRead });
    expect(facts.get(id)?.sd).toBe(sd);
  });

  test('the hard shell', () => {
    const { low, high, howRead } = corticalModulus;
    expect(facts.get('cortical-bone-modulus')).toMatchObject({ low, high, howRead });
  });
});

test('strength of a modulus: that of the bone in the list, and between the foams about their share', () => {
  for (const name of boneNames) {
    expect(boneStrength(bones[name].modulus.value)).toBe(bones[name].strength.value);
  }
  expect(boneStrength(200)).toBeGreaterThan(bones['foam grade 15'].strength.value);
  expect(boneStrength(200)).toBeLessThan(bones['foam grade 20'].strength.value);
  expect(boneStrength(400) / boneStrength(200)).toBeCloseTo(2, 12);
});

test('a name that is none is refused, and a modulus between them has none', () => {
  expect(() => boneOf('balsa' as BoneName)).toThrow(RangeError);
  expect(() => boneOf('toString' as BoneName)).toThrow(/name is toString; allowed: bone, across/);
  expect(boneWithModulus(200)).toBeUndefined();
});
