import { expect } from 'vitest';

/** How far a number may lie from what is expected: the wider of the two. Every call names its own. */
export interface Tolerance {
  /** In the unit of the number. */
  readonly absolute?: number;
  /** As a fraction of the expected number. */
  readonly relative?: number;
}

/** The one comparison of numbers in these tests. An infinite number is close only to itself; NaN to nothing. */
export function expectClose(actual: number, expected: number, tolerance: Tolerance): void {
  if (!Number.isFinite(expected)) {
    expect(actual).toBe(expected);
    return;
  }
  const allowed = Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * Math.abs(expected));
  const difference = Math.abs(actual - expected);
  expect(
    difference <= allowed,
    `${actual} is not ${expected}: off by ${difference}, allowed ${allowed}`,
  ).toBe(true);
}
