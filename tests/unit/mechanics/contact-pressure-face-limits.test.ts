import { describe, expect, test } from 'vitest';
import { directionMap, face } from '../../../sims/geometry/index.ts';
import { contactPressure, pressureField } from '../../../sims/mechanics/index.ts';
import { expectClose } from '../geometry/close.ts';
import { assertCarried, carriedBy, layer, usual } from './polyethylene.ts';
import { cut, lipped, pear, worn } from './pressed-faces.ts';

const load = { ballRadius: 24, ...layer, compressiveLoad: 500 };

describe('contactPressure over a face: limits', () => {
  test('face: too much for the layer is told, with the greatest load', () => {
    for (const input of [pear, cut]) {
      const question = { ...load, face: face(input), translation: 2, direction: 1 };
      const contact = contactPressure({ ...question, compressiveLoad: 1e9 });
      if (contact.state !== 'too much for the layer') throw new Error(contact.state);
      expect(contact.sideForce).toBeNull();
      const below = { ...question, compressiveLoad: 0.98 * contact.greatestLoad };
      expectClose(carriedBy(below).penetration, layer.thickness, { relative: 0.03 });
    }
  });

  test('face: refuses a ball that is off the face', () => {
    const question = { ...load, face: face(pear), direction: 0 };
    for (const translation of [-0.1, 60, NaN, Infinity]) {
      expect(() => contactPressure({ ...question, translation })).toThrow(
        `translation is ${translation}; allowed: 0 to where the ball is still over the face, mm`,
      );
    }
    expect(() => contactPressure({ ...question, translation: 0, ballRadius: -1 })).toThrow(
      'ballRadius is -1; allowed: ',
    );
  });

  test('face: past the crest it must be held back', () => {
    const surface = face(pear);
    const [row] = directionMap(surface, 24, { directions: [0], translations: 60 });
    const translation = (row?.dislocationTranslation ?? NaN) + 2;
    const contact = carriedBy({ ...load, face: surface, translation });
    expect(contact.sideForce).toBeLessThan(0);
  });

  test('face: never NaN, for balls that bridge, tiny loads and soft layers', () => {
    for (const input of [pear, lipped, cut, worn]) {
      const surface = face(input);
      for (const ballRadius of [8, 24, 40]) {
        for (const [compressiveLoad, modulus] of [
          [1e-6, 690],
          [500, 690],
          [500, 5],
        ] as const) {
          for (const translation of [0, 1e-6, 1, 6]) {
            const contact = contactPressure({
              ...load,
              ballRadius,
              compressiveLoad,
              modulus,
              face: surface,
              translation,
              direction: 2,
            });
            if (contact.state === 'too much for the layer') {
              expect(contact.greatestLoad).toBeLessThan(compressiveLoad);
              continue;
            }
            const numbers = [
              contact.peakPressure,
              contact.contactArea,
              contact.sideForce,
              contact.crossForce,
              contact.rimShare,
              ...contact.centreOfPressure,
            ];
            expect(numbers.filter((number) => !Number.isFinite(number))).toStrictEqual([]);
            expect(contact.peakPressure).toBeGreaterThan(0);
            expect(contact.contactArea).toBeGreaterThan(0);
          }
        }
      }
    }
  });
});

describe('pressureField', () => {
  test.each([
    ['socket', usual],
    ['face', { ...load, face: face(cut), translation: 2 }],
  ] as const)('pressureField: on a %s it is what the patches are the means of', (_, question) => {
    const contact = assertCarried(
      contactPressure({ ...question, translation: 1.4, direction: 0.5 }),
    );
    const field = pressureField({ ...question, ballCentre: contact.ballCentre });
    for (const { x, y, pressure } of contact.patches) {
      expectClose(field(x, y), pressure, { absolute: 0.02 * contact.peakPressure });
    }
    expect(field(30, 0)).toBe(0);
    expect(field(0, -35)).toBe(0);
  });

  test('pressureField: the peak is the peak', () => {
    const contact = carriedBy(usual);
    const field = pressureField({ ...usual, ballCentre: contact.ballCentre });
    expectClose(field(0, 0), contact.peakPressure, { relative: 1e-12 });
    expect(field(10, 0)).toBe(0);
  });
});
