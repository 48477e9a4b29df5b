import { describe, expect, test } from 'vitest';
import { gapAct, gapCells, settingOf } from '../../../sims/benches/gap-and-heat/acts.ts';
import { feelsAt, halfAt, stemOf } from '../../../sims/benches/gap-and-heat/cut-figure.ts';
import { boneAt, heatOf } from '../../../sims/benches/gap-and-heat/heat.ts';
import { mantlesOf } from '../../../sims/benches/gap-and-heat/mantle.ts';
import { boneUntil, runSpan, stillTime } from '../../../sims/benches/gap-and-heat/stage-times.ts';
import { createView } from '../../../sims/figures/view.ts';

const loose = { measured: 'keel', fitError: 3 } as const;
const setting = settingOf({ change: loose });
const heat = heatOf(setting, 'keel');

describe('acts of Gap and Heat on the stage', () => {
  test.each([loose, { measured: 'pegs', fitError: 1 } as const])(
    'an act is what the bench computes for it: %o',
    (change) => {
      const { result } = gapAct('', change);
      const mantles = mantlesOf(settingOf({ change }));
      const own = heatOf(mantles.setting, change.measured);
      expect(result.cement).toBe(mantles[change.measured].cement);
      expect(result.peak).toBe(own.peakAtBone);
      expect(result.above).toBe(own.timeAbove47);
    },
  );

  test('numbers are written in cm³, °C and minutes', () => {
    expect(gapCells({ cement: 1701.2, peak: 47.39, above: 40 })).toEqual(['1.70', '47.4', '0.7']);
    expect(gapCells({ cement: 575, peak: 42.18, above: 0 })).toEqual(['0.58', '42.2', '0']);
  });
});

describe('a run of setting', () => {
  test('what has been so far only grows, and comes to the peak and the whole time', () => {
    const until = [0, 200, 366, 600, runSpan].map((time) => boneUntil(heat, time));
    for (const [i, { highest, above }] of until.entries()) {
      expect(highest).toBeGreaterThanOrEqual(until[i - 1]?.highest ?? 0);
      expect(above).toBeGreaterThanOrEqual(until[i - 1]?.above ?? 0);
    }
    expect(until[0]).toEqual({ highest: boneAt(heat, 0), above: 0 });
    expect(until.at(-1)?.highest).toBe(heat.peakAtBone);
    expect(boneUntil(heat, Infinity)).toEqual({
      highest: heat.peakAtBone,
      above: heat.timeAbove47,
    });
  });

  test('what stands still is shown within a quarter of a degree of its peak', () => {
    for (const name of ['pegs', 'keel'] as const) {
      for (const fitError of [0, 1, 3]) {
        const own = heatOf(settingOf({ change: { fitError } }), name);
        expect(own.peakAtBone - boneAt(own, stillTime)).toBeLessThan(0.25);
      }
    }
  });
});

test('the thermometer feels the bone where the cement ends', () => {
  const view = createView({ width: 100, height: 100, scale: 10, origin: { x: 50, y: 0 } });
  const { x, y } = feelsAt(setting, view);
  const { x: across, z } = view.toMm(x, y);
  expect(across).toBeCloseTo(halfAt(stemOf(setting, 'keel'), -z, 4), 9);
  expect(-z).toBeLessThan(setting.keelHeight);
});
