import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  angleOf,
  isobarLevels,
  peakPlace,
  pressureAt,
  pressureOnLine,
} from '../../../sims/benches/pressure-print/field.ts';
import { isobarAt, leftEnd } from '../../../sims/benches/pressure-print/isobar.ts';
import { printOf, type Print } from '../../../sims/benches/pressure-print/print.ts';
import { defaultPrint, type PrintSetting } from '../../../sims/benches/pressure-print/setting.ts';
import { expectClose } from '../geometry/close.ts';

const places: readonly Partial<PrintSetting>[] = [
  { translation: 0 },
  { translation: 1 },
  { translation: 1.3 },
  { translation: 4 },
  { translation: 13.9 },
  { mismatch: 0, translation: 0 },
  { mismatch: 0, translation: 0.3 },
  { mismatch: 0, translation: 3 },
  { mismatch: 10, translation: 2, load: 2000, thickness: 2 },
  { held: 'arc', arc: 120, translation: 2 },
  { held: 'depth', depth: 0.5, translation: 0.5 },
];
const at = (change: Partial<PrintSetting>): Print => printOf({ ...defaultPrint, ...change });
const settings = fc
  .tuple(
    fc.double({ min: 0, max: 10, noNaN: true }),
    fc.double({ min: 10, max: 41, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([mismatch, width, share]) => at({ mismatch, width, translation: (share * width) / 2 }));

/** Angle between the line of centres and a place of the socket seen en face at (x, y). */
function angleAt({ field }: Print, x: number, y: number): number {
  const { curvatureRadius, tilt } = field;
  const z = Math.sqrt(curvatureRadius ** 2 - x ** 2 - y ** 2);
  return Math.acos(Math.min(1, (x * Math.sin(tilt) + z * Math.cos(tilt)) / curvatureRadius));
}

describe('the field', () => {
  test.each(places)('%j: its peak is the peak of the contact', (change) => {
    const print = at(change);
    const { field, contact } = print;
    const peak = pressureAt(field, Math.max(0, field.tilt - field.halfArc));
    expectClose(peak, contact.peakPressure, { relative: 1e-6 });
    const there = pressureOnLine(field, peakPlace(field)) ?? NaN;
    expectClose(there, contact.peakPressure, { relative: 1e-6 });
  });

  // A patch has its mean pressure at its centre of pressure; a whole ring of 1/20 of the radius differs by that much at most.
  test.each(places)('%j: it is the pressure of the patches', (change) => {
    const print = at(change);
    expect(print.contact.patches.length).toBeGreaterThan(100);
    for (const { x, y, pressure } of print.contact.patches) {
      const told = pressureAt(print.field, angleAt(print, x, y));
      expectClose(told, pressure, { absolute: 0.05 * print.contact.peakPressure });
    }
  });

  test('angleOf undoes pressureAt', () => {
    fc.assert(
      fc.property(
        settings,
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        ({ field, contact }, share) => {
          const pressure = share * contact.peakPressure;
          expectClose(pressureAt(field, angleOf(field, pressure)), pressure, {
            absolute: 1e-8 * contact.peakPressure + 1e-8,
          });
        },
      ),
    );
  });

  test('beyond the rim there is no pressure to tell', () => {
    const { field } = at({});
    expect(pressureOnLine(field, 14.001)).toBeNull();
    expect(pressureOnLine(field, -14.001)).toBeNull();
    expect(pressureOnLine(field, -13)).toBe(0);
  });
});

describe('isobarAt', () => {
  test.each(places)('%j: every place of an outline is at its pressure or on the rim', (change) => {
    const print = at(change);
    const { field, contact } = print;
    const rim = field.curvatureRadius * Math.sin(field.halfArc);
    for (const share of [0, 0.25, 0.5, 0.9]) {
      const { outline } = isobarAt(field, share * contact.peakPressure);
      expect(outline.length).toBeGreaterThan(30);
      for (const { x, y } of outline) {
        const isOnRim = Math.abs(Math.hypot(x, y) - rim) < 1e-6;
        const pressure = pressureAt(field, angleAt(print, x, y));
        if (isOnRim) expect(pressure).toBeGreaterThan((share - 1e-3) * contact.peakPressure);
        else
          expectClose(pressure, share * contact.peakPressure, {
            absolute: 1e-3 * contact.peakPressure,
          });
      }
    }
  });

  test('the outline of no pressure goes round the contact area, seen en face', () => {
    // Centred and small, the curved area and its picture differ by 1 − cos: 1 % here.
    const { field, contact } = at({ translation: 0 });
    const area = shoelace(isobarAt(field, 0).outline);
    expectClose(area, contact.contactArea, { relative: 0.02 });
  });

  test('a conforming pair presses on its whole face', () => {
    const { field, pair } = at({ mismatch: 0, translation: 0 });
    const area = shoelace(isobarAt(field, 0).outline);
    expectClose(area, Math.PI * (pair.socket.width / 2) ** 2, { relative: 0.01 });
  });

  test('a higher pressure lies inside a lower one; above the peak there is none', () => {
    fc.assert(
      fc.property(settings, ({ field, contact }) => {
        const highs = [0, 0.2, 0.5, 0.8, 0.99].map(
          (share) => isobarAt(field, share * contact.peakPressure).high,
        );
        for (const [i, high] of highs.entries()) {
          if (i > 0) expect(high).toBeLessThanOrEqual((highs[i - 1] ?? NaN) + 1e-9);
        }
        expect(isobarAt(field, 1.01 * contact.peakPressure)).toMatchObject({
          outline: [],
          high: 0,
        });
      }),
    );
  });

  test('leftEnd is on the outline', () => {
    const { field } = at({});
    const { outline } = isobarAt(field, 10);
    expectClose(leftEnd(field, 10, 0) ?? NaN, Math.min(...outline.map(({ x }) => x)), {
      absolute: 0.01,
    });
    expect(leftEnd(field, 10, 8)).toBeNull();
  });
});

test('isobarLevels: three to seven round pressures, evenly apart, under the peak', () => {
  fc.assert(
    fc.property(fc.double({ min: -2, max: 4, noNaN: true }), (power) => {
      const peak = 10 ** power;
      const levels = isobarLevels(peak);
      expect(levels.length).toBeGreaterThanOrEqual(3);
      expect(levels.length).toBeLessThanOrEqual(7);
      expect(levels.at(-1)).toBeLessThan(peak);
      const step = levels[0] ?? NaN;
      for (const [i, level] of levels.entries())
        expectClose(level, (i + 1) * step, { relative: 1e-5 });
      expect(String(step)).toMatch(/^(0\.0*)?(1|2|25|5)0*(\.5)?$|^2\.5$|e-/);
    }),
  );
});

function shoelace(outline: readonly { readonly x: number; readonly y: number }[]): number {
  const sum = outline.reduce((total, { x, y }, i) => {
    const next = outline[(i + 1) % outline.length] ?? { x, y };
    return total + x * next.y - next.x * y;
  }, 0);
  return Math.abs(sum) / 2;
}
