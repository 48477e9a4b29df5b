import { describe, expect, test } from 'vitest';
import { factText, scatterText } from '../../../site/sources/fact-text.ts';

describe('factText', () => {
  test.each([
    [{ value: 24, sd: 2.1, unit: 'mm' }, '24 ± 2.1\u00a0mm'],
    [{ value: 0.044, unit: 'ratio' }, '0.044'],
    [{ value: -9, unit: '°' }, '−9°'],
    [{ low: 0.45, high: 1, unit: 'ratio' }, '0.45 to 1.00'],
    [{ value: 100_000, unit: 'cycles' }, '100\u202f000\u00a0cycles'],
  ])('%j', (fact, text) => {
    expect(factText(fact)).toBe(text);
  });

  test('leaves the scatter out where asked', () => {
    expect(factText({ value: 24, sd: 2.1, unit: 'mm' }, true)).toBe('24\u00a0mm');
  });
});

test('scatterText says what a mean, its range and its count are', () => {
  const fact = { value: 884, sd: 12, low: 650, high: 1264, unit: 'N', n: 10 };
  expect(scatterText(fact)).toBe('mean ± standard deviation; from 650 to 1264\u00a0N; n = 10');
});
