import { expect, test } from 'vitest';
import { acts } from '../../../lessons/08-cement/acts.ts';
import { pegGrowth, THICK, WIDENED } from '../../../lessons/08-cement/cements.ts';
import * as s from '../../../lessons/08-cement/stage-cements.ts';

test('twice the gap: the sheet doubles, the corners grow fourfold, and the vote’s B is right', () => {
  expect(s.growth.sheet).toBeCloseTo(2, 12);
  expect(s.growth.corners).toBeCloseTo(4, 12);
  const [planned, widened] = acts.map(({ result }) => result.cement);
  expect((widened ?? NaN) / (planned ?? NaN)).toBeCloseTo(pegGrowth, 9);
  expect(Math.abs(pegGrowth - 2.5)).toBeLessThan(0.05);
});

test('the acts are named for the cement they have', () => {
  for (const { text, change } of acts) {
    expect(text).toBe(`${change.measured}, ${(change.gap ?? 0) + (change.fitError ?? 0)} mm`);
  }
});

test('four times the cement brings four times the heat, and less than four times the rise', () => {
  const [thin, thick] = s.doors;
  expect((thick?.heat ?? NaN) / (thin?.heat ?? NaN)).toBeCloseTo(4, 12);
  const times = (thick?.rise ?? NaN) / (thin?.rise ?? NaN);
  expect(times).toBeGreaterThan(3);
  expect(times).toBeLessThan(4);
});

test('warmth leaves in time from thin mantles, and not from the thickest', () => {
  const [one, two] = s.crossings;
  expect((two?.time ?? NaN) / (one?.time ?? NaN)).toBeCloseTo(4, 12);
  expect(s.crossings.map(({ isLeft }) => isLeft)).toEqual([false, false, false, true]);
  expect(s.crossings.at(-1)?.thickness).toBe(THICK);
});

test('the curve of peaks rises all the way, ever less steeply, and stays under the ceiling', () => {
  const rising = s.keelPeaks.filter(([thickness]) => thickness >= WIDENED / 2);
  const steps = rising.slice(1).map(([, peak], i) => peak - (rising[i]?.[1] ?? NaN));
  expect(Math.min(...steps)).toBeGreaterThan(0);
  expect(steps.every((step, i) => i === 0 || step < (steps[i - 1] ?? NaN))).toBe(true);
  expect(Math.max(...rising.map(([, peak]) => peak))).toBeLessThan(s.flatCeiling.peak);
});

test('a higher heat of setting is a higher peak, and the two rules stand some degrees apart', () => {
  const [least, most] = s.thickPeaks;
  expect(most).toBeGreaterThan((least ?? NaN) + 10);
  expect(s.minuteOfHarm.skin - s.minuteOfHarm.bone).toBeGreaterThan(5);
});
