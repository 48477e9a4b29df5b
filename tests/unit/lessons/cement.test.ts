import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holdNames } from '../../../sims/benches/gap-and-heat/settings.ts';
import { cementHeat, cementVolume, materials } from '../../../sims/mechanics/index.ts';
import * as n from '../../../lessons/08-cement/cements.ts';

const CLOSE = 6;
const gaps = fc.double({ min: 0.05, max: 3, noNaN: true });

describe('the volume by its parts', () => {
  test.each(holdNames)('%s: the parts make up the volume of the module', (name) => {
    fc.assert(
      fc.property(gaps, (gap) => {
        expect(n.partsOf(name, gap).total).toBeCloseTo(n.solidVolume(name, gap), CLOSE);
      }),
    );
  });

  test('of one peg of any size as well', () => {
    const size = fc.double({ min: 2, max: 12, noNaN: true });
    fc.assert(
      fc.property(gaps, size, size, (gap, diameter, length) => {
        const { total } = cementVolume({
          pegs: [{ x: 0, y: 0, diameter, length, tip: 'flat', gap }],
        });
        expect(n.pegParts(gap, { count: 1, diameter, length }).total).toBeCloseTo(total, CLOSE);
      }),
    );
  });

  test('the sheet goes with the gap, the corners with its square', () => {
    for (const name of holdNames) {
      const [once, twice] = [n.partsOf(name, 0.8), n.partsOf(name, 1.6)];
      expect(twice.sheet).toBeCloseTo(2 * once.sheet, CLOSE);
      expect(twice.corners).toBeCloseTo(4 * once.corners, CLOSE);
    }
  });

  test('twice the gap takes between two and four times the ring, the more the thinner the peg', () => {
    const growth = (diameter: number): number => {
      const ring = (gap: number): number => {
        const { sheet, corners } = n.pegParts(gap, { count: 1, diameter, length: 10 });
        return sheet + corners;
      };
      return ring(2) / ring(1);
    };
    expect(growth(1000)).toBeCloseTo(2, 2);
    expect(growth(0.001)).toBeCloseTo(4, 2);
    expect(growth(3)).toBeGreaterThan(growth(8));
  });

  test('the first prediction is as the text has it', () => {
    expect(n.growthOutcome).toBe('more-than-twice');
    expect(n.pegGrowth).toBeCloseTo(2.5, 1);
    expect(n.keelGrowth).toBeGreaterThan(2);
    expect(n.keelGrowth).toBeLessThan(n.pegGrowth);
  });
});

describe('the heat at its two ends', () => {
  test('the second prediction: thick is hotter, by less than the cement is more', () => {
    expect(n.hotterOutcome).toBe('thick');
    expect(n.riseTimes).toBeGreaterThan(1);
    expect(n.riseTimes).toBeLessThan(n.THICK / n.THIN);
  });

  test('thin: twice the cement is twice the rise by heat alone', () => {
    const byHeat = (thickness: number): number => {
      const [with_, without] = [n.totalHeat, 0].map(
        (heat) => n.heatAt(thickness, 'keel', { heat }).histories.bone,
      );
      return Math.max(...Array.from(with_ ?? [], (value, i) => value - (without?.[i] ?? NaN)));
    };
    expect(byHeat(0.2) / byHeat(0.1)).toBeGreaterThan(1.9);
    expect(byHeat(0.2) / byHeat(0.1)).toBeLessThan(2);
  });

  test('cement without end brings the bone to the ceiling, fast or slow', () => {
    const properties = (name: keyof typeof materials) => ({
      conductivity: materials[name].conductivity.value,
      volumetricHeat: materials[name].volumetricHeat.value,
    });
    for (const peakTime of [120, 240, 360]) {
      const { peakAtBone } = cementHeat({
        cementThickness: 30,
        polymerThickness: 0,
        boneDepth: 40,
        initialTemperatures: { polymer: n.start, cement: n.start, bone: n.bodyTemperature },
        kinetics: { totalHeat: n.totalHeat, peakTime },
        properties: {
          polymer: properties('polyethylene'),
          cement: properties('bone cement'),
          bone: properties('cancellous bone'),
        },
      });
      expect(peakAtBone).toBeCloseTo(n.ceiling, 2);
    }
  });

  test('beside the keel no mantle passes the ceiling, fast or slow', () => {
    for (const thickness of [6, 12, 24]) {
      for (const peakTime of [120, 600, 1200]) {
        expect(n.heatAt(thickness, 'keel', { peakTime }).peakAtBone).toBeLessThan(n.ceiling);
      }
    }
  });

  test('at first touch the bone has the temperature of contact', () => {
    const { bone } = n.heatAt(15).histories;
    for (const value of bone.slice(2, 30)) expect(value).toBeCloseTo(n.firstTouch, 1);
  });

  test('the cement is hottest inside, nearer to the keel; the bone at its surface', () => {
    const { conduction, peakInCement, peakAtBone } = n.thick;
    expect(peakInCement).toBeGreaterThan(peakAtBone);
    const half = n.halfOf('keel');
    let [most, at] = [-Infinity, NaN];
    let inBone = -Infinity;
    for (const row of conduction.temperatures) {
      row.forEach((value, i) => {
        const depth = conduction.depths[i] ?? NaN;
        if (value > most) [most, at] = [value, depth];
        if (depth > half + n.THICK) inBone = Math.max(inBone, value);
      });
    }
    expect(at).toBeGreaterThan(half);
    expect(at).toBeLessThan(half + n.THICK / 2);
    expect(inBone).toBeLessThan(peakAtBone);
  });

  test('round a peg the peak is much the same and passes sooner', () => {
    expect(Math.abs(n.thickPeg.peakAtBone - n.thick.peakAtBone)).toBeLessThan(1.5);
    expect(n.thickPeg.timeAbove47).toBeLessThan(n.thick.timeAbove47 / 2);
  });

  test('the heat of setting moves the peak more than a cold start or a slow cement', () => {
    const { least, most } = n.thickByHeat;
    const span = most.peakAtBone - least.peakAtBone;
    for (const other of [n.chilled, n.slower]) {
      const fall = n.thick.peakAtBone - other.peakAtBone;
      expect(fall).toBeGreaterThan(0);
      expect(span).toBeGreaterThan(3 * fall);
    }
  });

  test('the thin mantle passes its heat on as it makes it, the thick one does not', () => {
    expect(n.crossing(n.THIN)).toBeLessThan(n.settingSpan / 5);
    expect(n.crossing(n.THICK)).toBeGreaterThan(n.settingSpan);
    expect(n.fillsKeel).toBeLessThan(n.settingSpan);
    expect(Math.abs(n.taking.polymer / n.taking.bone - 1)).toBeLessThan(0.05);
  });
});

describe('two criteria', () => {
  test('rise alike and begin some degrees apart', () => {
    expect(n.perDegree.bone).toBeCloseTo(2, 9);
    expect(Math.abs(n.perDegree.skin / n.perDegree.bone - 1)).toBeLessThan(0.1);
    expect(n.quotedMinute.bone).toBeCloseTo(1, 9);
    expect(n.quotedMinute.skin).toBeCloseTo(0.0064, 4);
    expect(n.minuteAt(n.skinMinute).skin).toBeCloseTo(1, 1);
    expect(Math.round(n.skinMinute - n.QUOTED)).toBe(7);
  });

  test('a mantle between the two limits is harm by one and none by the other', () => {
    expect(n.harmful.bone).toBeLessThan(n.harmful.minute);
    expect(n.harmful.minute).toBeLessThan(n.harmful.skin);
    const between = n.heatAt((n.harmful.bone + n.harmful.skin) / 2).injury;
    expect(between.isPastBoneLimit).toBe(true);
    expect(between.isPastSkinLimit).toBe(false);
  });

  test('numbers of any size keep a few digits', () => {
    expect(n.rounded(0.00010504)).toBe('0.00011');
    expect(n.rounded(2.914)).toBe('2.9');
    expect(n.rounded(6103.7)).toBe('6104');
  });
});
