import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  degrees,
  fixedText,
  mm,
  newtons,
  percent,
  ratio,
  signed,
} from '../../../sims/shared/format.ts';
import { real } from '../geometry/arbitraries.ts';

const space = '\u00a0';
const narrow = '\u202f';

describe('fixedText', () => {
  test.each([
    [4.25, 1, '4.3'],
    [-4.25, 1, '−4.3'],
    [0.15, 1, '0.2'],
    [1.005, 2, '1.01'],
    [2.675, 2, '2.68'],
    [8.345, 2, '8.35'],
    [0.1 + 0.2, 1, '0.3'],
    [1.4999999999999998, 0, '2'],
    [0.05, 0, '0'],
    [3, 2, '3.00'],
    [1e-7, 2, '0.00'],
    [5e-324, 1, '0.0'],
    [0.99999, 2, '1.00'],
    [9.995, 2, '10.00'],
  ])('fixedText: %d to %i decimals is %s', (value, digits, text) => {
    expect(fixedText(value, digits)).toBe(text);
  });

  test('fixedText: no minus before nothing', () => {
    expect(fixedText(-0, 1)).toBe('0.0');
    expect(fixedText(-0.04, 1)).toBe('0.0');
    expect(fixedText(-0.05, 1)).toBe('−0.1');
  });

  test('fixedText: thousands apart from 10 000 up', () => {
    expect(fixedText(9999, 0)).toBe('9999');
    expect(fixedText(10000, 0)).toBe(`10${narrow}000`);
    expect(fixedText(1234567.89, 1)).toBe(`1${narrow}234${narrow}567.9`);
    expect(fixedText(-100000, 0)).toBe(`−100${narrow}000`);
  });

  test('fixedText: words for Infinity, an error for NaN', () => {
    expect(fixedText(Infinity, 2)).toBe('no limit');
    expect(fixedText(-Infinity, 2)).toBe('−no limit');
    expect(() => fixedText(NaN, 2)).toThrow(RangeError);
  });

  test('fixedText: reads back to within half of its last digit', () => {
    fc.assert(
      fc.property(real(-20_000, 20_000), fc.integer({ min: 0, max: 4 }), (value, digits) => {
        const text = fixedText(value, digits);
        const back = Number(text.replace('−', '-').replaceAll(narrow, ''));
        expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-7);
        expect(text).not.toContain('-');
        expect(text.split('.')[1]?.length ?? 0).toBe(digits);
      }),
    );
  });
});

describe('mm', () => {
  test('mm: one decimal, none where the millimetres are whole', () => {
    expect(mm(4.25)).toBe(`4.3${space}mm`);
    expect(mm(28)).toBe(`28${space}mm`);
    expect(mm(28, 1)).toBe(`28.0${space}mm`);
    expect(mm(27.000000000000004)).toBe(`27${space}mm`);
    expect(mm(-1.5)).toBe(`−1.5${space}mm`);
    expect(mm(Infinity)).toBe('no limit');
  });
});

describe('newtons', () => {
  test('newtons: whole', () => {
    expect(newtons(27.3)).toBe(`27${space}N`);
    expect(newtons(27.3, 1)).toBe(`27.3${space}N`);
    expect(newtons(Infinity)).toBe('no limit');
  });
});

describe('degrees', () => {
  test('degrees: from radians, no space before the sign', () => {
    expect(degrees(Math.PI / 6)).toBe('30.0°');
    expect(degrees(-Math.PI / 2, 0)).toBe('−90°');
    expect(degrees(Infinity)).toBe('no limit');
  });
});

describe('ratio', () => {
  test('ratio: two decimals, no unit', () => {
    expect(ratio(2 / 3)).toBe('0.67');
    expect(ratio(Infinity)).toBe('no limit');
  });
});

describe('percent', () => {
  test('percent: of one', () => {
    expect(percent(0.145)).toBe(`15${space}%`);
    expect(percent(-0.032, 1)).toBe(`−3.2${space}%`);
    expect(percent(Infinity)).toBe('no limit');
  });
});

describe('signed', () => {
  test('signed: a plus only where something is left to show', () => {
    expect(signed(0.021, percent)).toBe(`+2${space}%`);
    expect(signed(-0.021, percent)).toBe(`−2${space}%`);
    expect(signed(0.001, percent)).toBe(`0${space}%`);
    expect(signed(0, mm)).toBe(`0${space}mm`);
    expect(signed(Infinity, ratio)).toBe('+no limit');
  });
});

describe('spaces', () => {
  test('spaces: none that may break a line', () => {
    const texts = [mm(4.2), newtons(50), percent(0.5), degrees(1), newtons(123456), ratio(0.5)];
    for (const text of texts) expect(text).not.toContain(' ');
  });
});
