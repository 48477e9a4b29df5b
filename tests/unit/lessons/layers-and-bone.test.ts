import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as l from '../../../lessons/09-layers-and-bone/layers.ts';
import * as r from '../../../lessons/09-layers-and-bone/rim.ts';
import { shearGive } from '../../../sims/benches/layer-strip/strip.ts';
import { boneOf, flatBed, type ShearLag } from '../../../sims/mechanics/index.ts';

/** By the trapezium, N on each mm of width. */
function passedOver({ shear }: ShearLag): number {
  return shear.reduce((sum, { position, stress }, i) => {
    const before = shear[i - 1];
    return before === undefined
      ? 0
      : sum + ((position - before.position) * (stress + before.stress)) / 2;
  }, 0);
}

describe('what the text says of joints', () => {
  test('the plastic’s end bears most, and the other end and the middle next to nothing', () => {
    const [left, middle, right] = l.shearAlong(l.metalBack);
    expect(l.shearOutcome).toBe('plastic');
    expect(left).toBeCloseTo(l.metalBack.strip.peakShear, 9);
    expect(Math.max(middle, right)).toBeLessThan(0.02 * left);
  });

  test('the other answers are found for joints of which they are true', () => {
    expect(l.shearOutcomeOf(l.equals)).toBe('both');
    expect(l.shearOutcomeOf(l.metalOnBone)).toBe('metal');
    const rigid = l.jointOf('rigid', {
      upper: 'cobalt-chromium',
      lower: 'cobalt-chromium',
      upperThickness: 10,
      lowerThickness: 10,
      length: 10,
      film: 1,
    });
    expect(l.shearOutcomeOf(rigid)).toBe('even');
  });

  test('every shaded area is the pull', () => {
    for (const { strip, setting } of [l.metalBack, l.equals, l.metalOnBone]) {
      expect((passedOver(strip.shear) * l.WIDTH) / setting.pull).toBeCloseTo(1, 2);
    }
  });

  test('length and the metal do not change the peak; the plastic’s thickness does', () => {
    const peak = l.asItIs.strip.peakShear;
    const [, , , , moreMetal] = l.changes;
    for (const joint of [l.shorter, l.longer, l.cobalt, moreMetal]) {
      expect((joint?.strip.peakShear ?? NaN) / peak).toBeCloseTo(1, 2);
    }
    expect(l.thinner.strip.peakShear / peak).toBeCloseTo(2, 1);
    expect(l.filled.strip.peakShear).toBeLessThan(peak);
    expect(l.equals.strip.peakShear / peak).toBeCloseTo(1 / 2, 1);
  });

  test('the load passes within about the thickness of the plastic', () => {
    const { setting, strip } = l.metalBack;
    expect(strip.shear.transferLength / setting.upperThickness).toBeCloseTo(l.reachOfPlastic, 2);
    expect(l.reachOfPlastic).toBeCloseTo(1, 1);
  });

  test('in the long joint the peak is Pω/b times the part that the softer layer stretches', () => {
    for (const { strip, setting } of [l.longer, l.cobalt]) {
      const soft = 1 / (l.modulusOf(setting.upper) * setting.upperThickness);
      const stiff = 1 / (l.modulusOf(setting.lower) * setting.lowerThickness);
      const peak = (setting.pull / l.WIDTH / strip.shear.transferLength) * (soft / (soft + stiff));
      expect(strip.peakShear / peak).toBeCloseTo(1, 3);
    }
  });
});

describe('a mismatch without a load', () => {
  const mismatch = fc.double({ min: -0.01, max: 0.01, noNaN: true });
  const length = fc.integer({ min: 10, max: 60 });

  test('shears the ends against each other and leaves the middle alone', () => {
    fc.assert(
      fc.property(mismatch, length, (each, long) => {
        const at = (share: number): number =>
          l.mismatchShear({ ...l.BONDED, length: long }, each, (share * long) / 2);
        expect(at(0)).toBeCloseTo(0, 12);
        expect(at(1)).toBeCloseTo(-at(-1), 12);
        expect(Math.abs(at(1))).toBeGreaterThanOrEqual(Math.abs(at(0.5)));
      }),
    );
  });

  test('puts so much force into the middle of a long strip that both layers are of one length there', () => {
    const setting = { ...l.BONDED, length: 60 };
    const steps = 2000;
    const half = setting.length / 2;
    const force = Array.from({ length: steps }, (_, i) =>
      l.mismatchShear(setting, l.MISMATCH, ((i + 0.5) * half) / steps),
    ).reduce((sum, stress) => sum + (stress * half) / steps, 0);
    const give =
      1 / (l.modulusOf(setting.upper) * setting.upperThickness) +
      1 / (l.modulusOf(setting.lower) * setting.lowerThickness);
    const reach = half / l.metalBack.strip.shear.transferLength;
    expect((force * give) / l.MISMATCH / (1 - 1 / Math.cosh(reach))).toBeCloseTo(1, 4);
  });

  test('obeys the law of the pulled joint', () => {
    const [x, step] = [12, 0.01];
    const [a, b, c] = [x - step, x, x + step].map((at) =>
      l.mismatchShear(l.BONDED, l.MISMATCH, at),
    ) as [number, number, number];
    const omega = 1 / l.metalBack.strip.shear.transferLength;
    expect((a - 2 * b + c) / step ** 2 / (omega ** 2 * b)).toBeCloseTo(1, 4);
    expect(shearGive(l.BONDED)).toBeGreaterThan(0);
  });
});

describe('a metal back', () => {
  test('gains much in the middle and little at the rim, and pulls at the far edge', () => {
    expect(r.backed.middle.peak).toBeLessThan(0.6 * r.plain.middle.peak);
    expect(r.backed.rim.peak / r.plain.rim.peak).toBeGreaterThan(0.8);
    expect(r.backed.rim.peak).toBeLessThan(r.plain.rim.peak);
    expect(r.plain.middle.far).toBeLessThan(0);
    expect(r.backed.middle.far).toBeGreaterThan(0);
    expect(r.backed.rim.far).toBeLessThan(-10 * Math.abs(r.plain.rim.far));
    expect(r.jointShare).toBeLessThan(0.25);
  });

  test('every answer of the bone balances the load and its moment', () => {
    for (const { pressure, place } of r.backs) {
      const sum = (weight: (at: number) => number): number =>
        pressure.reduce((all, here, i) => {
          const before = pressure[i - 1];
          if (before === undefined) return 0;
          const both = here.pressure * weight(here.at) + before.pressure * weight(before.at);
          return all + ((here.at - before.at) * both * l.WIDTH) / 2;
        }, 0);
      expect(sum(() => 1) / r.PRESS).toBeCloseTo(1, 2);
      expect(sum((at) => at) / r.PRESS).toBeCloseTo(place, 1);
    }
  });

  test('lies on the bed that seats lie on', () => {
    const bone = boneOf('bone, across the face');
    const elements = flatBed(
      { kind: 'ellipse', width: l.WIDTH, height: r.length },
      { layer: { ...bone, thickness: 10 }, level: 0, elements: 100, isRough: false },
    );
    const stiffness = elements.reduce((sum, each) => sum + each.normalStiffness, 0);
    const area = (Math.PI / 4) * l.WIDTH * r.length;
    expect(stiffness / area / r.bedOf()).toBeCloseTo(1, 2);
  });
});
