import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { socketFromDepth, sphericalSocket } from '../../../sims/geometry/index.ts';
import { contactPressure } from '../../../sims/mechanics/index.ts';
import { ordinarySocket, real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';
import { carriedBy, component, layer, usual } from './polyethylene.ts';

describe('contactPressure: what cannot be carried', () => {
  test('contactPressure: a load that would go through the layer is told with the greatest one', () => {
    for (const translation of [0, 1.5, 5, 15]) {
      const contact = contactPressure({ ...usual, translation, compressiveLoad: 1e9 });
      expect(contact).toMatchObject({
        state: 'too much for the layer',
        peakPressure: null,
        sideForce: null,
        patches: [],
      });
      if (contact.state !== 'too much for the layer') return;
      const below = { ...usual, translation, compressiveLoad: contact.greatestLoad * 0.999 };
      const above = { ...below, compressiveLoad: contact.greatestLoad * 1.001 };
      expectClose(carriedBy(below).penetration, layer.thickness, { relative: 2e-3 });
      expect(contactPressure(above).state).toBe('too much for the layer');
    }
  });

  test('contactPressure: a contact at the rim too small for its extent to be told stands there, under the peak', () => {
    const contact = contactPressure({
      socket: sphericalSocket({ curvatureRadius: 20, width: 40 }),
      ballRadius: 0.4090224800394021 * 20,
      thickness: 1e-3,
      modulus: 10 ** 7.775035589362977,
      poisson: 0,
      compressiveLoad: 1e-6,
      translation: 20,
    });
    if (contact.state === 'too much for the layer') throw new Error('it is carried');
    expect(contact.centreOfPressure).toEqual([20, 0]);
    expect(contact.rimShare).toBe(1);
    expectClose(contact.meanPressure, contact.peakPressure, { relative: 1e-9 });
    expect(contact.contactArea).toBeGreaterThan(0);
  });

  test('contactPressure: never NaN and never endless, whatever is asked', () => {
    const sockets = fc.oneof(
      ordinarySocket,
      fc.constant(socketFromDepth({ depth: 0, width: 30 })),
      fc.constant(sphericalSocket({ curvatureRadius: 20, width: 40 })),
    );
    fc.assert(
      fc.property(
        fc.tuple(sockets, real(0.02, 1), fc.oneof(fc.constantFrom(0, 1), real(0, 1))),
        fc.tuple(real(-3, 2), real(-3, 9), fc.oneof(fc.constantFrom(0, 0.499), real(0, 0.499))),
        real(-6, 9),
        ([socket, fit, part], [thick, stiff, poisson], power) => {
          const ballRadius = fit * Math.min(socket.curvatureRadius, 100);
          const contact = contactPressure({
            socket,
            ballRadius,
            thickness: 10 ** thick,
            modulus: 10 ** stiff,
            poisson,
            compressiveLoad: 10 ** power,
            translation: (part * socket.width) / 2,
          });
          if (contact.state === 'too much for the layer') {
            expect(contact.greatestLoad).toBeGreaterThan(0);
            expect(contact.greatestLoad).toBeLessThan(10 ** power);
            return;
          }
          const numbers = [
            contact.peakPressure,
            contact.meanPressure,
            contact.contactArea,
            contact.penetration,
          ];
          for (const number of numbers) expect(number).toBeGreaterThan(0);
          const others = [
            contact.sideForce,
            contact.rimShare,
            ...contact.centreOfPressure,
            ...contact.ballCentre,
            ...contact.patches.flatMap(({ x, y, area, pressure }) => [x, y, area, pressure]),
          ];
          expect(others.filter((number) => !Number.isFinite(number))).toStrictEqual([]);
          expect(contact.rimShare).toBeGreaterThanOrEqual(0);
          expect(contact.rimShare).toBeLessThanOrEqual(1);
        },
      ),
      { numRuns: 150 },
    );
  });

  const refused: readonly (readonly [argument: string, value: unknown])[] = [
    ...[0, -4, NaN, Infinity, '4', null].map((value) => ['thickness', value] as const),
    ...[0, -690, NaN, Infinity, null].map((value) => ['modulus', value] as const),
    ...[-0.01, 0.4991, 0.5, 1, NaN, null].map((value) => ['poisson', value] as const),
    ...[0, -1, NaN, Infinity, null].map((value) => ['compressiveLoad', value] as const),
    ...[-0.1, 15.001, NaN, null].map((value) => ['translation', value] as const),
    ...[0, -24, 27.001, NaN, null].map((value) => ['ballRadius', value] as const),
    ...[NaN, Infinity, null].map((value) => ['direction', value] as const),
  ];

  test.each(refused)('contactPressure: refuses %s %j', (argument, value) => {
    const ask = (): unknown => contactPressure({ ...usual, [argument]: value });
    expect(ask).toThrow(RangeError);
    expect(ask).toThrow(`${argument} is ${String(value)}; allowed: `);
  });

  test('contactPressure: question unmodified', () => {
    const question = Object.freeze({ ...usual, socket: Object.freeze({ ...component }) });
    contactPressure(question);
    expect(question).toStrictEqual(usual);
  });
});
