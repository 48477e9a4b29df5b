import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stemOf } from '../../../sims/benches/gap-and-heat/cut-figure.ts';
import { describe as describeBench } from '../../../sims/benches/gap-and-heat/describe.ts';
import {
  boneAt,
  halfPolymer,
  heatOf,
  highestOf,
  profileAt,
} from '../../../sims/benches/gap-and-heat/heat.ts';
import { injuryWords } from '../../../sims/benches/gap-and-heat/injury.ts';
import { layoutFor, LEAST_WIDTH } from '../../../sims/benches/gap-and-heat/layout.ts';
import { clock } from '../../../sims/benches/gap-and-heat/lettering.ts';
import { designOf, mantlesOf, thicknessOf } from '../../../sims/benches/gap-and-heat/mantle.ts';
import { readingsOf } from '../../../sims/benches/gap-and-heat/readings.ts';
import {
  defaultGap,
  gapFields,
  holdNames,
  ranges,
  type GapNumber,
  type GapSetting,
} from '../../../sims/benches/gap-and-heat/settings.ts';
import { heatTable } from '../../../sims/benches/gap-and-heat/table.ts';
import { cementVolume } from '../../../sims/mechanics/index.ts';
import { nearestAllowed } from '../../../sims/shared/range.ts';
import { readUrlState, writeUrlState } from '../../../sims/shared/url-state.ts';

/** Any setting the controls reach. */
const anySetting: fc.Arbitrary<GapSetting> = fc.record({
  measured: fc.constantFrom(...holdNames),
  ...(Object.fromEntries(
    Object.entries(ranges).map(([field, range]) => [
      field,
      fc
        .double({ min: range.min, max: range.max, noNaN: true })
        .map((value) => nearestAllowed(value, range)),
    ]),
  ) as Record<GapNumber, fc.Arbitrary<number>>),
});

const heatsOf = (setting: GapSetting) => ({
  pegs: heatOf(setting, 'pegs'),
  keel: heatOf(setting, 'keel'),
});

describe('mantles', () => {
  test('mantles: whatever is set, no holes meet, and a sentence says what was not taken', () => {
    fc.assert(
      fc.property(anySetting, (asked) => {
        const { setting, message, pegs, keel } = mantlesOf(asked);
        const isSame =
          Math.abs(setting.gap - asked.gap) + Math.abs(setting.fitError - asked.fitError) < 1e-9;
        expect(message === '').toBe(isSame);
        expect(thicknessOf(setting)).toBeGreaterThanOrEqual(ranges.gap.min - 1e-9);
        expect(thicknessOf(setting)).toBeLessThanOrEqual(thicknessOf(asked) + 1e-9);
        for (const { cement, planned } of [pegs, keel]) {
          expect(planned).toBeGreaterThan(0);
          expect(cement).toBeGreaterThanOrEqual(planned);
        }
        // What is sound stays as it is.
        expect(mantlesOf(setting).message).toBe('');
      }),
      { numRuns: 300 },
    );
  });

  test('mantles: five thick pegs with a wide gap would meet', () => {
    const asked = { ...defaultGap, pegCount: 5, pegDiameter: 8, gap: 1, fitError: 1 };
    const { setting, message } = mantlesOf(asked);
    expect(message).toContain('before their holes meet');
    const { pegs = [] } = designOf(setting, 'pegs');
    const wider = { pegs, fitError: setting.fitError + 0.11 };
    expect(() => cementVolume(wider)).toThrow('holes do not meet');
  });
});

describe('heat', () => {
  test('heat: the profile runs from the middle of the polymer into the bone and meets the thermometer', () => {
    for (const measured of holdNames) {
      const setting = { ...defaultGap, measured };
      const heat = heatOf(setting, measured);
      const profile = profileAt(heat, setting, 360);
      const inside = halfPolymer(setting, measured) + thicknessOf(setting);
      expect(profile[0]?.[0]).toBeGreaterThan(-inside);
      expect(profile[0]?.[0]).toBeLessThan(-inside + 0.1);
      const near = profile.filter(([depth]) => Math.abs(depth) < 0.1).map(([, value]) => value);
      expect(near).toHaveLength(2);
      expect(boneAt(heat, 360)).toBeLessThan(Math.max(...near));
      expect(boneAt(heat, 360)).toBeGreaterThan(Math.min(...near));
      const highest = highestOf(heat, setting);
      profile.forEach(([, value], i) => {
        expect(highest[i]?.[1]).toBeGreaterThanOrEqual(value);
      });
    }
  });

  test('heat: a moment outside the half hour is its nearest end', () => {
    const heat = heatOf(defaultGap, 'keel');
    expect(boneAt(heat, 1e6)).toBe(heat.histories.bone.at(-1));
    expect(boneAt(heat, 0)).toBe(heat.histories.bone[0]);
  });

  test('heat: any setting gives numbers, words and a drawing within its bounds', () => {
    fc.assert(
      fc.property(anySetting, fc.integer({ min: LEAST_WIDTH, max: 1000 }), (asked, width) => {
        const mantles = mantlesOf(asked);
        const heats = heatsOf(mantles.setting);
        const words = [
          describeBench(mantles, heats),
          ...readingsOf(mantles, heats).flatMap(({ value, note = '' }) => [value, note]),
        ].join(' ');
        expect(words).not.toMatch(/NaN|undefined|Infinity|no limit/);
        const {
          cuts,
          depth,
          time,
          volumes,
          height,
          width: across,
        } = layoutFor(mantles, heats, null, width);
        for (const { box } of [cuts.pegs, cuts.keel, depth, time, volumes]) {
          expect(box.left).toBeGreaterThanOrEqual(0);
          expect(box.right).toBeLessThanOrEqual(across);
          expect(box.bottom).toBeGreaterThan(box.top + 40);
          expect(box.bottom).toBeLessThan(height);
        }
        for (const name of holdNames) {
          const { view, box } = cuts[name];
          const deepest = stemOf(mantles.setting, name).length + thicknessOf(mantles.setting);
          expect(view.y(-deepest)).toBeLessThan(box.bottom);
          const [, hottest = 0] = time.y.domain();
          expect(heats[name].peakInCement).toBeLessThan(hottest);
        }
      }),
      { numRuns: 20 },
    );
  });

  test('heat: the table is the histories', () => {
    const heats = heatsOf(defaultGap);
    const { rows, header } = heatTable(heats, 120);
    expect(rows.map(([time]) => time)).toStrictEqual(Array.from({ length: 16 }, (_, i) => 120 * i));
    expect(header).toHaveLength(5);
    expect(rows[3]?.[1]).toBeCloseTo(boneAt(heats.pegs, 360), 3);
    expect(rows[3]?.[3]).toBeCloseTo(boneAt(heats.keel, 360), 3);
  });
});

describe('words', () => {
  test('words: the criteria agree, or it is said that they do not', () => {
    const at = (fitError: number): string =>
      injuryWords(heatOf({ ...defaultGap, fitError }, 'keel'));
    expect(at(0)).toContain('Neither says harm.');
    expect(at(1)).toContain('They do not agree');
    expect(at(3)).toContain('Both say harm.');
  });

  test('words: a clock reads as people say it', () => {
    expect([0, 45, 60, 363.6].map((time) => clock(time).replaceAll('\u00a0', ' '))).toStrictEqual([
      '0 s',
      '45 s',
      '1 min',
      '6 min 4 s',
    ]);
  });

  test('words: a link carries the whole setting', () => {
    fc.assert(
      fc.property(anySetting, (setting) => {
        const { state, problem } = readUrlState(gapFields, writeUrlState(gapFields, setting));
        expect(state).toStrictEqual({ ...setting });
        expect(problem).toBe('');
      }),
    );
  });
});
