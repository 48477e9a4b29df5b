import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as n from '../../../lessons/03-depth-and-direction/cups.ts';
import { factValue } from '../../../lessons/fact-value.ts';

/** The map is solved to this, where a section is an exact circle. */
const MAP = 1e-3;

describe('a near rim is a low rim', () => {
  const bearings = Array.from({ length: 36 }, (_, i) => i * 10);

  test.each(bearings)(
    'cut from one sphere, the ratio at %d° is tan β with sin β = ρ/R, or less where the rim beside it is nearer',
    (bearing) => {
      const { curvatureRadiusSI: radius } = n.oneRadius.input;
      const own = Math.tan(Math.asin(n.rimAt(n.oneRadius, bearing).away / radius));
      const found = n.ratioAt(n.oneRadius, bearing);
      expect(found).toBeLessThan(own + MAP);
      expect(found).toBeGreaterThan(0.97 * own);
    },
  );

  test('the two sections in the figure have the ratio of their half arc', () => {
    for (const bearing of [n.FORWARD, n.UP, n.BACK, n.DOWN]) {
      expect(
        Math.abs(n.ratioAt(n.bone, bearing) - Math.tan(n.halfArcOf(n.bone, bearing))),
      ).toBeLessThan(MAP);
    }
  });

  test('forward is the easiest of the three ways asked about', () => {
    expect(n.easiestWay).toBe('forward');
  });
});

describe('the rule of the rim moved in', () => {
  test('nothing cut leaves the ratio, all cut leaves nothing, and more cut leaves less', () => {
    const ratio = fc.double({ min: 0.05, max: 1.5, noNaN: true });
    const halfWidth = fc.double({ min: 8, max: 20, noNaN: true });
    const share = fc.double({ min: 0, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(ratio, halfWidth, share, share, (before, w, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((part) => part * w) as [
          number,
          number,
        ];
        expect(n.ratioAfterCut(before, w, 0)).toBeCloseTo(before, 9);
        expect(n.ratioAfterCut(before, w, w)).toBe(0);
        expect(n.ratioAfterCut(before, w, more)).toBeLessThanOrEqual(
          n.ratioAfterCut(before, w, less) + 1e-12,
        );
      }),
    );
  });

  test('it agrees with the map of the mean bone, forward', () => {
    const whole = n.ratioAt(n.bone, n.FORWARD);
    const { away } = n.rimAt(n.bone, n.FORWARD);
    for (const { cut, ratio } of n.cutRows) {
      expect(Math.abs(ratio - n.ratioAfterCut(whole, away, cut))).toBeLessThan(5e-3);
    }
  });

  test('from the measured ratio it comes to the measured one, within its deviation', () => {
    const id = 'stability-ratio-anterior-defect';
    expect(Math.abs(n.afterCut - factValue(id))).toBeLessThan(factValue(id, 'sd'));
  });

  test('a straight cut in front is felt beside it, and nowhere else', () => {
    const ways = n.eightWays(n.worn, n.bone);
    const felt = ways.filter(({ ratio, other = NaN }) => ratio < other - MAP);
    expect(felt.map(({ bearing }) => bearing)).toEqual([
      n.FORWARD,
      n.FORWARD_AND_UP,
      n.FORWARD_AND_DOWN,
    ]);
    const rest = ways.filter((way) => !felt.includes(way));
    for (const { ratio, other } of rest) expect(ratio).toBeCloseTo(other ?? NaN, 6);
  });
});

test('a rigid lip promises more than any whole shoulder held, and loses more than was measured', () => {
  expect(n.ratioAt(n.lipped, n.UP)).toBeGreaterThan(n.measuredWhole);
  expect(n.labrumRatio).toBeGreaterThan(n.measuredWhole);
  expect(n.rigidLoss).toBeGreaterThan(n.measuredLoss);
});

test('wider on the same curve is deeper and holds more; wider at the same depth holds less', () => {
  const { first, sameCurve, sameDepth } = n;
  expect(sameCurve.socket.width).toBe(sameDepth.socket.width);
  expect(sameCurve.socket.curvatureRadius).toBe(first.socket.curvatureRadius);
  expect(sameCurve.socket.depth).toBeGreaterThan(first.socket.depth);
  expect(sameDepth.socket.depth).toBeCloseTo(first.socket.depth, 9);
  expect(sameCurve.ratio).toBeGreaterThan(first.ratio);
  expect(sameDepth.ratio).toBeLessThan(first.ratio);
});
