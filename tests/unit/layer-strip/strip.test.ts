import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { describe as inWords, peakPlace } from '../../../sims/benches/layer-strip/describe.ts';
import { layoutFor, LEAST_WIDTH, niceTop } from '../../../sims/benches/layer-strip/layout.ts';
import { presetOf, presets } from '../../../sims/benches/layer-strip/presets.ts';
import { readingsOf } from '../../../sims/benches/layer-strip/readings.ts';
import {
  defaultStrip,
  materialNames,
  ranges,
  stripFields,
  type StripNumber,
  type StripSetting,
} from '../../../sims/benches/layer-strip/settings.ts';
import {
  sagAt,
  shearAt,
  shearGive,
  stripOf,
  WIDTH,
} from '../../../sims/benches/layer-strip/strip.ts';
import { stripTable } from '../../../sims/benches/layer-strip/table.ts';
import { materials } from '../../../sims/mechanics/index.ts';
import { nearestAllowed } from '../../../sims/shared/range.ts';
import { readUrlState, writeUrlState } from '../../../sims/shared/url-state.ts';
import { real } from '../geometry/arbitraries.ts';
import { expectClose } from '../geometry/close.ts';

const EXACT = { relative: 1e-9 };

const numberIn = (field: StripNumber) =>
  real(ranges[field].min, ranges[field].max).map((value) => nearestAllowed(value, ranges[field]));
/** Every setting a visitor can reach. */
const settings: fc.Arbitrary<StripSetting> = fc.record({
  upper: fc.constantFrom(...materialNames),
  lower: fc.constantFrom(...materialNames),
  upperThickness: numberIn('upperThickness'),
  lowerThickness: numberIn('lowerThickness'),
  length: numberIn('length'),
  film: numberIn('film'),
  pull: numberIn('pull'),
  press: numberIn('press'),
});

describe('stripOf', () => {
  test('the joint carries the pull', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { shear } = stripOf(setting);
        const places = shear.shear;
        const carried = places.slice(1).reduce((sum, place, i) => {
          const before = places[i];
          if (before === undefined) return NaN;
          return (
            sum + (WIDTH * (place.position - before.position) * (place.stress + before.stress)) / 2
          );
        }, 0);
        expectClose(carried, setting.pull, { relative: 1e-3 });
      }),
    );
  });

  test('a layer’s own give is a third of its thickness: shear that falls evenly to the free face', () => {
    // The mean over the thickness of the slide of each height, summed in thin slices, against t/3G.
    const slices = 10_000;
    let slide = 0;
    let mean = 0;
    for (let i = 0; i < slices; i++) {
      slide += (1 - (i + 0.5) / slices) / slices;
      mean += slide / slices;
    }
    const { youngsModulus, poissonRatio } = materials.polyethylene;
    const shearModulus = youngsModulus.value / (2 * (1 + poissonRatio.value));
    const rigid = { ...defaultStrip, lowerThickness: 1e-9 };
    expectClose(shearGive(rigid), (4 * mean) / shearModulus, { relative: 1e-3 });
  });

  test('cement between softens the joint: its peak falls', () => {
    const peaks = [0, 0.2, 0.5, 1].map((film) => stripOf({ ...defaultStrip, film }).peakShear);
    peaks.slice(1).forEach((peak, i) => expect(peak).toBeLessThan(peaks[i] ?? NaN));
  });

  test('turned over: the same peak at the other end, the other sign of α', () => {
    const there = stripOf(defaultStrip);
    const back = stripOf({
      ...defaultStrip,
      upper: defaultStrip.lower,
      lower: defaultStrip.upper,
      upperThickness: defaultStrip.lowerThickness,
      lowerThickness: defaultStrip.upperThickness,
    });
    expectClose(back.peakShear, there.peakShear, EXACT);
    expectClose(back.pair.alpha, -there.pair.alpha, EXACT);
    expectClose(back.deflection, there.deflection, EXACT);
    expectClose(shearAt(there.shear, 0), shearAt(back.shear, defaultStrip.length), EXACT);
  });

  test('the peak is where the words say it is', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { shear } = stripOf(setting);
        const [left, right] = [shearAt(shear, 0), shearAt(shear, setting.length)];
        const place = peakPlace(setting);
        if (place.startsWith('the left')) expect(left).toBeGreaterThanOrEqual(right * (1 - 1e-9));
        else if (place.startsWith('the right'))
          expect(right).toBeGreaterThanOrEqual(left * (1 - 1e-9));
        else expectClose(left, right, { relative: 1e-6 });
      }),
    );
  });

  test('the bend meets the beam’s equation: curvature falls evenly from the support to the rim', () => {
    const strip = stripOf(defaultStrip);
    const step = strip.arm / 1000;
    for (const share of [0.1, 0.5, 0.9]) {
      const x = share * strip.arm;
      const curvature =
        (sagAt(strip, x + step) - 2 * sagAt(strip, x) + sagAt(strip, x - step)) / step ** 2;
      expectClose(curvature, strip.bending.curvature * (1 - share), { relative: 1e-3 });
    }
    expectClose(sagAt(strip, strip.arm), -strip.deflection, EXACT);
    expect(sagAt(strip, -3)).toBe(0);
  });
});

describe('what is shown', () => {
  test('a strip that bends too far says so, and gives no number for it', () => {
    const thin: StripSetting = {
      ...defaultStrip,
      lower: 'polyethylene',
      upperThickness: 0.5,
      lowerThickness: 0.5,
    };
    const strip = stripOf(thin);
    expect(strip.isSmallBend).toBe(false);
    expect(inWords(thin, strip)).toContain('bends too far');
    expect(readingsOf(thin, strip).at(-1)?.value).toBe('too far');
    expect(stripOf(defaultStrip).isSmallBend).toBe(true);
  });

  test('everything a visitor can reach is a number, drawn inside the picture', () => {
    fc.assert(
      fc.property(settings, fc.integer({ min: LEAST_WIDTH, max: 1000 }), (setting, width) => {
        const strip = stripOf(setting);
        const layout = layoutFor(setting, strip, width);
        expect(JSON.stringify(layout)).not.toContain('null');
        for (const { right, bottom } of [
          layout.shear.box,
          layout.through.box,
          layout.moduli.box,
          layout.pair.box,
        ]) {
          expect(right).toBeLessThanOrEqual(width);
          expect(bottom).toBeLessThan(layout.height);
        }
        expect(layout.bent.times * strip.deflection).toBeLessThanOrEqual(5.0001);
        expect(layout.shear.y.domain()[1]).toBeGreaterThan(strip.peakShear);
        for (const { value, note = '' } of readingsOf(setting, strip)) {
          expect(value + note).not.toMatch(/NaN|undefined|no limit/);
        }
        expect(inWords(setting, strip)).not.toMatch(/NaN|undefined/);
      }),
    );
  });

  test('the table holds what the drawing shows', () => {
    const strip = stripOf(defaultStrip);
    const { header, rows } = stripTable(defaultStrip, strip, 5);
    expect(header).toHaveLength(5);
    expect(rows.map(([place]) => place)).toEqual([0, 8.5, 17, 25.5, 34]);
    expect(rows[0]?.[1]).toBeCloseTo(strip.peakShear, 5);
    expect(rows[2]?.[4]).toBe(0);
    expect(rows[4]?.[4]).toBeCloseTo(-1000 * strip.deflection, 3);
  });

  test('a link brings every setting back', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { state, problem } = readUrlState(stripFields, writeUrlState(stripFields, setting));
        expect(problem).toBe('');
        expect(state).toEqual(setting);
      }),
    );
    expect(writeUrlState(stripFields, defaultStrip)).toBe('');
    const { state, problem } = readUrlState(stripFields, '?upper=glass&film=7');
    expect(state).toEqual(defaultStrip);
    expect(problem).toMatch(/upper material “glass”.*cement between them “7”/);
  });

  test('presets are settings within the ranges, each known again', () => {
    for (const preset of presets) {
      expect(presetOf(preset.setting)).toBe(preset);
      for (const field of Object.keys(ranges) as StripNumber[]) {
        expect(nearestAllowed(preset.setting[field], ranges[field])).toBe(preset.setting[field]);
      }
    }
    expect(presetOf({ ...defaultStrip, pull: 30 })).toBeUndefined();
  });

  test('round ends of scales', () => {
    expect([0.93, 1.9, 9.9, 0.012].map(niceTop)).toEqual([1.5, 3, 15, expect.closeTo(0.015)]);
  });
});
