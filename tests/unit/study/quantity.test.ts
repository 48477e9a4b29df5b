import { expect, test } from 'vitest';
import { quantity, readNumber, writeQuantity } from '../../../sims/study/quantity.ts';

test.each([
  [quantity(12.345, 1, 'mm'), '12.3\u00a0mm'],
  [quantity(0.5795, 2), '0.58'],
  [quantity(30, 0, '°'), '30°'],
  [quantity(-4.2, 1, 'mm'), '−4.2\u00a0mm'],
])('%o is written %s', (value, text) => {
  expect(writeQuantity(value)).toBe(text);
});

test.each([NaN, Infinity, -Infinity])('%d is no quantity', (value) => {
  expect(() => quantity(value, 1)).toThrow(RangeError);
});

test.each([
  ['0.58', '', 0.58],
  [' 0,58 ', '', 0.58],
  ['.5', '', 0.5],
  ['18 N', 'N', 18],
  ['240 N·mm', 'N·mm', 240],
  ['−3', '', -3],
  ['-3', '', -3],
  ['+3', '', 3],
])('“%s” is read as a number', (text, unit, value) => {
  expect(readNumber(text, unit)).toBe(value);
});

test.each(['', '  ', 'half', '1/2', '1e3', '0x10', '1.2.3', '5 mm', 'N', '.', '-'])(
  '“%s” is not read as a number of newtons',
  (text) => {
    expect(readNumber(text, 'N')).toBeUndefined();
  },
);
