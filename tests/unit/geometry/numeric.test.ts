import { describe, expect, test } from 'vitest';
import {
  RIGHT_ANGLE,
  RIGHT_ANGLE_TOLERANCE,
  clampedAsin,
  inRange,
  positive,
  slopeOf,
} from '../../../sims/geometry/numeric.ts';

describe('clampedAsin', () => {
  test('clampedAsin: a hair outside is the end itself', () => {
    expect(clampedAsin(1 + 1e-15)).toBe(Math.PI / 2);
    expect(clampedAsin(-1 - 1e-15)).toBe(-Math.PI / 2);
    expect(clampedAsin(0.5)).toBe(Math.asin(0.5));
  });
});

describe('slopeOf', () => {
  test('slopeOf: infinite at and beyond a right angle, and within the tolerance below it', () => {
    expect(slopeOf(RIGHT_ANGLE)).toBe(Infinity);
    expect(slopeOf(2.5)).toBe(Infinity);
    expect(slopeOf(RIGHT_ANGLE - RIGHT_ANGLE_TOLERANCE / 2)).toBe(Infinity);
  });

  test('slopeOf: finite just short of it', () => {
    expect(slopeOf(RIGHT_ANGLE - 2 * RIGHT_ANGLE_TOLERANCE)).toBeGreaterThan(4e8);
    expect(slopeOf(RIGHT_ANGLE - 2 * RIGHT_ANGLE_TOLERANCE)).toBeLessThan(Infinity);
    expect(slopeOf(0)).toBe(0);
  });
});

describe('inRange', () => {
  test('inRange: returns what lies inside, both ends included', () => {
    for (const value of [2, 3, 4]) expect(inRange('value', value, 2, 4, 'mm')).toBe(value);
  });

  test('inRange: says what was wrong, and what is allowed', () => {
    expect(() => inRange('load', -1, 0, Infinity, 'N')).toThrow(
      new RangeError('load is -1; allowed: 0 to any larger finite value N'),
    );
    expect(() => inRange('share', 2, 0, 1, '')).toThrow(
      new RangeError('share is 2; allowed: 0 to 1'),
    );
  });
});

describe('positive', () => {
  test('positive: above 0 only', () => {
    expect(positive('width', 1e-300, 'mm')).toBe(1e-300);
    expect(() => positive('width', 0, 'mm')).toThrow(
      new RangeError('width is 0; allowed: any finite value above 0 mm'),
    );
  });
});
