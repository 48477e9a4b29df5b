import { describe, expect, test } from 'vitest';
import { FARTHEST, filling, motionLines } from '../../../lessons/09-layers-and-bone/measured.ts';
import * as w from '../../../lessons/09-layers-and-bone/weeks.ts';

describe('what the text says of bone', () => {
  test('rest first ends with more bone, though both move by nearly the same between the limits', () => {
    expect(w.restOutcome).toBe('more');
    expect(w.late.share).toBeGreaterThan(3 * w.early.share);
    for (const { motion } of [w.early, w.late]) {
      expect(motion[1] * w.MICROMETRES).toBeGreaterThan(w.LOWER);
      expect(motion[1] * w.MICROMETRES).toBeLessThan(w.UPPER);
    }
    expect(w.late.motion[1] / w.early.motion[1]).toBeGreaterThan(0.85);
  });

  test('time does not close the gap: neither grows in the second half of the weeks', () => {
    for (const { weeks, share } of [w.early, w.late]) {
      expect((weeks[w.WEEKS / 2 - 1]?.share ?? NaN) / share).toBeCloseTo(1, 3);
    }
  });

  test('less load fills more spaces, a ball nearer the rim fewer, and small pegs most', () => {
    expect(w.half.filled).toBeGreaterThan(w.early.filled);
    expect(w.nearRim.filled).toBeLessThan(w.early.filled);
    expect(w.pegged.filled).toBeGreaterThan(w.half.filled);
    expect(w.pegged.motion[0]).toBeLessThan(w.early.motion[0] / 2);
  });

  test('the spaces that keep still fill, and only they', () => {
    for (const { share, motion } of w.early.places) {
      expect(share > 0.5).toBe(motion * w.MICROMETRES <= w.LOWER);
    }
  });
});

describe('one hold by itself', () => {
  test('a week of rest decides both races', () => {
    expect(w.slightLong.rest - w.slightShort.rest).toBe(1);
    expect(w.slightLong.share).toBeCloseTo(w.ceiling, 2);
    expect(w.slightShort.share).toBeLessThan(w.ceiling / 2);
    expect(w.muchLong.rest - w.muchShort.rest).toBe(1);
    expect(w.muchShort.share).toBeLessThan(0.01);
    expect(w.muchLong.share).toBeGreaterThan(0.4);
  });

  test('goes on growing from the share that is needed, and not from less', () => {
    const needed = w.shareNeeded(w.SLIGHT);
    const atLoad = (rest: number): number => w.slightLong.weeks[rest - 1]?.share ?? NaN;
    expect(atLoad(w.slightShort.rest)).toBeLessThan(needed);
    expect(atLoad(w.slightLong.rest)).toBeGreaterThan(needed);
    expect(w.SLIGHT / (1 + needed * (w.stiffening - 1))).toBeCloseTo(w.LOWER, 9);
  });
});

describe('what is drawn of the measured', () => {
  test('filling rises with the weeks, and the law at rest runs through it', () => {
    for (const { weeks, low, high } of filling) {
      expect(low).toBeLessThanOrEqual(high);
      const share = 100 * (w.undisturbed.weeks[weeks - 1]?.share ?? NaN);
      expect(share).toBeGreaterThanOrEqual(low - 1);
      expect(share).toBeLessThanOrEqual(high + 1);
    }
  });

  test('the evidence conflicts: bone was found at more motion than fibrous tissue', () => {
    const lines = motionLines.flatMap((group) => group.lines);
    const at = (fate: string) =>
      lines.flatMap((line) => (line.fate === fate && line.at !== undefined ? [line.at] : []));
    expect(Math.max(...at('bone'))).toBeGreaterThan(Math.min(...at('both')));
    for (const { at: mean = 0, sd = 0, range } of lines) {
      expect(mean + sd).toBeLessThanOrEqual(FARTHEST);
      if (range !== undefined) expect(range[0]).toBeLessThan(range[1]);
    }
  });
});
