import { describe, expect, it } from 'vitest';
import { minutesAndSeconds, paceAt, paceInWords } from '../../../site/lecture/pace.ts';

const minutes = [1, 0.5, 2];

describe('paceAt', () => {
  it('knows when the plan begins and ends a step', () => {
    expect(paceAt(minutes, 0, 0)).toEqual({ plannedStart: 0, plannedEnd: 60, late: 0 });
    expect(paceAt(minutes, 2, 100)).toEqual({ plannedStart: 90, plannedEnd: 210, late: 0 });
  });

  it('counts lateness past the end of the step and earliness before its start', () => {
    expect(paceAt(minutes, 1, 130).late).toBe(40);
    expect(paceAt(minutes, 1, 45).late).toBe(-15);
    expect(paceAt(minutes, 1, 60).late).toBe(0);
    expect(paceAt(minutes, 1, 90).late).toBe(0);
  });
});

describe('minutesAndSeconds', () => {
  it.each([
    [0, '0:00'],
    [7.9, '0:07'],
    [60, '1:00'],
    [3725, '62:05'],
    [-3, '0:00'],
  ])('%d s is %s', (seconds, text) => {
    expect(minutesAndSeconds(seconds)).toBe(text);
  });
});

describe('paceInWords', () => {
  it.each([
    [0, 'On time'],
    [0.9, 'On time'],
    [75, '1:15 behind'],
    [-30, '0:30 ahead'],
  ])('%d s late is %j', (late, words) => {
    expect(paceInWords(late)).toBe(words);
  });
});
