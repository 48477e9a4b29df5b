import { expect, test } from 'vitest';
import { defaultLayer, layerRanges } from '../../../sims/benches/two-curves/layer.ts';
import { defaultPair } from '../../../sims/benches/two-curves/pair-ranges.ts';
import { factEntry, factValue } from '../../../lessons/fact-value.ts';

/*
 * A bench may not know of the lessons, so its first numbers are written down twice: here they are held to be the facts
 * that a visitor can look up.
 */
test('the plastic and the load a bench opens with are the facts that are told of them', () => {
  expect(defaultLayer).toEqual({
    load: factValue('contact-load'),
    thickness: factValue('drawn-component-thickness'),
    modulus: factValue('polyethylene-modulus'),
    poisson: factValue('polyethylene-poisson'),
  });
});

test('so are its ball, its width, and the mismatch one often hears, halved', () => {
  expect(defaultPair.ballDiameter).toBe(factValue('default-ball-diameter'));
  expect(defaultPair.width).toBe(factValue('default-cup-width'));
  expect(defaultPair.depth).toBe(factValue('default-cup-depth'));
  expect(2 * defaultPair.mismatch).toBe(factValue('mismatch-compromise-diametral'));
});

test('the control for the modulus reaches the ends that are told of it', () => {
  const { low = NaN, high = NaN } = factEntry('polyethylene-modulus');
  expect(layerRanges.modulus.min).toBeLessThanOrEqual(low);
  expect(layerRanges.modulus.max).toBe(high);
});
