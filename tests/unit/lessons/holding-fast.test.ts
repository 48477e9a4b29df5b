import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seatOf } from '../../../sims/benches/peg-board/seat.ts';
import { solveSeat } from '../../../sims/mechanics/index.ts';
import { elasticGroup } from '../../../lessons/07-holding-fast/elastic-group.ts';
import { comparisons, pullOutRows } from '../../../lessons/07-holding-fast/measured.ts';
import { holdPictures } from '../../../lessons/07-holding-fast/hold-pictures.ts';
import * as n from '../../../lessons/07-holding-fast/seats.ts';

/** Two whole numbers of decimals that a solver and a formula share. */
const CLOSE = 6;

describe('a group of holds', () => {
  const places = fc.array(fc.double({ min: -20, max: 20, noNaN: true }), {
    minLength: 2,
    maxLength: 7,
  });
  const apart = places.filter((all) => Math.max(...all) - Math.min(...all) > 1);
  const force = fc.double({ min: -500, max: 500, noNaN: true });

  test('balances the pull and the moment', () => {
    fc.assert(
      fc.property(apart, force, force, (all, pull, moment) => {
        const { pulls } = elasticGroup(all, 100, { pull, moment });
        const middle = all.reduce((sum, place) => sum + place, 0) / all.length;
        const sum = pulls.reduce((total, each) => total + each, 0);
        const turned = pulls.reduce((total, each, i) => total + each * ((all[i] ?? 0) - middle), 0);
        expect(sum).toBeCloseTo(pull, CLOSE);
        expect(turned).toBeCloseTo(moment, CLOSE);
      }),
    );
  });

  test('pulls and turns as the seat of three dimensions does with the same springs', () => {
    const [stiffness, pull, moment] = [4000, 120, 900];
    const xs = [-7, -1, 3, 9];
    const { pulls, turn } = elasticGroup(xs, stiffness, { pull, moment });
    const middle = xs.reduce((sum, x) => sum + x, 0) / xs.length;
    const elements = xs.flatMap((x) =>
      [-5, 5].map((y) => ({
        position: [x, y, 0] as const,
        normal: [0, 0, 1] as const,
        normalStiffness: stiffness / 2,
        tangentialStiffness: 10,
        tension: 'elastic' as const,
      })),
    );
    const found = solveSeat({
      elements,
      load: { force: [0, 0, pull], point: [middle + moment / pull, 0, 0] },
    });
    xs.forEach((_, i) => {
      const both = [0, 1].reduce(
        (sum, j) => sum - (found.elements[2 * i + j]?.normalForce ?? 0),
        0,
      );
      expect(both).toBeCloseTo(pulls[i] ?? NaN, CLOSE);
    });
    expect(Math.abs(found.rotation[1])).toBeCloseTo(turn, 9);
  });

  test('twice as far apart pulls half and turns a quarter', () => {
    expect(n.farPair.squares).toBe(4 * n.nearPair.squares);
    expect(n.farPair.pulls[1]).toBeCloseTo((n.nearPair.pulls[1] ?? NaN) / 2, 12);
    expect(n.leftByGroup).toBeCloseTo(1 / 4, 12);
  });

  test('on one spot resists no moment, and says so', () => {
    expect(elasticGroup([3, 3], 100, { pull: 10, moment: 0 }).pulls).toEqual([5, 5]);
    expect(() => elasticGroup([3, 3], 100, { pull: 0, moment: 1 })).toThrow(RangeError);
    expect(() => elasticGroup([], 100, { pull: 1, moment: 0 })).toThrow(RangeError);
  });
});

describe('what the text says of the layouts', () => {
  const lift = n.liftAt;

  test('three in a line lift more with the load in front than above, and the triangles less than they', () => {
    expect(n.lineOutcome).toBe('more');
    expect(lift(n.inLine, n.FRONT)).toBeGreaterThan(lift(n.near, n.FRONT));
    expect(lift(n.near, n.FRONT)).toBeGreaterThan(lift(n.far, n.FRONT));
    expect(new Set([n.inLine, n.near, n.far].map(({ pullOut }) => pullOut.toFixed(0))).size).toBe(
      1,
    );
  });

  test('spacing lowers the lift-off, by less than the group alone, and hardly the pull', () => {
    expect(n.spacingOutcome).toBe('more-than-half');
    expect(n.leftOnBench).toBeGreaterThan(n.leftByGroup);
    const [before, after] = [n.near, n.far].map((each) => n.hardestPull(each.at(n.FRONT)));
    expect(Math.abs((after ?? NaN) / (before ?? NaN) - 1)).toBeLessThan(0.05);
    const lifts = n.spacingRows.map((row) => row.lift);
    expect(lifts).toEqual(lifts.toSorted((a, b) => b - a));
  });

  test('the far triangle is weakest with the load below', () => {
    expect(n.far.most.bearing).toBe(n.DOWN);
    expect(Math.abs(Math.cos((n.near.most.bearing * Math.PI) / 180))).toBeGreaterThan(0.9);
  });

  test('one thick peg has the best margin and the largest lift-off', () => {
    for (const other of n.layouts.filter((each) => each !== n.one)) {
      expect(other.margin).toBeLessThan(n.one.margin);
      expect(other.most.liftOff).toBeLessThan(n.one.most.liftOff);
    }
  });

  test('the keel holds as much as three pegs, better along itself than across', () => {
    expect(Math.abs(n.plate.pullOut / n.near.pullOut - 1)).toBeLessThan(0.05);
    expect(lift(n.plate, n.FRONT)).toBeGreaterThan(lift(n.plate, n.UP));
    expect(n.keelBroadside.pressure).toBeLessThan(n.pegsSideways.pressure);
    expect(n.keelEndOn.pressure).toBeGreaterThan(n.pegsSideways.pressure);
  });

  test('the short pegs at the edge slip, the fluted one in the middle does not, grown in or not', () => {
    for (const layout of [n.fluted, n.grown]) {
      const slipping = layout.rose.flatMap(({ bearing }) =>
        layout.at(bearing).pegs.flatMap(({ isSlipping }, i) => (isSlipping ? [i] : [])),
      );
      expect([...new Set(slipping)].toSorted()).toEqual([1, 2, 3]);
      expect(layout.margin).toBeCloseTo(1, 6);
    }
    expect(n.middleOf(n.grown)).toBeCloseTo(4 * n.middleOf(n.fluted), 6);
    const kept = lift(n.grown, n.FRONT) / lift(n.fluted, n.FRONT);
    expect(kept).toBeGreaterThan(0.9);
    expect(kept).toBeLessThan(1);
  });

  test('straight out comes the sum of what the sides hold', () => {
    expect(n.near.pullOut).toBeCloseTo(3 * n.usual.pullOut, 0);
    expect(n.usual.pullOut).toBeCloseTo(n.usual.strength * n.sidesOfPeg(n.newPeg), 9);
    const whole = seatOf(n.plate.design, n.ground).keel?.strength ?? NaN;
    expect(n.plate.pullOut / whole).toBeCloseTo(1, 3);
  });
});

describe('what is drawn of the measured', () => {
  test('every comparison is of shares, with its counts', () => {
    for (const { rows } of comparisons) {
      for (const { first, second, counts, study } of rows) {
        expect(study).toMatch(/^\p{Lu}\p{L}+ \d{4}$/u);
        for (const share of [first, second]) expect(share >= 0 && share <= 100).toBe(true);
        for (const count of counts) expect(count).toBeGreaterThan(0);
      }
    }
  });

  test('the evidence conflicts: in each group some study favours one side and some the other', () => {
    for (const { rows } of comparisons) {
      expect(rows.some(({ first, second }) => first < second)).toBe(true);
      expect(rows.some(({ first, second }) => first > second)).toBe(true);
    }
  });

  test('the model’s pull-out lies inside the measured range, for pegs and for the keel', () => {
    const [pegs, model, keel, plate] = pullOutRows;
    for (const [measured, computed] of [
      [pegs, model],
      [keel, plate],
    ] as const) {
      const [low, high] = measured?.range ?? [NaN, NaN];
      expect(computed?.mean).toBeGreaterThan(low);
      expect(computed?.mean).toBeLessThan(high);
    }
  });

  test('every kind of hold has its picture', () => {
    expect(holdPictures.map(({ kind }) => kind)).toEqual([
      ...n.kindRows.map(({ kind }) => kind),
      'keel cemented',
    ]);
    for (const { outline, depth } of holdPictures) {
      expect(Math.min(...outline.map(([, z]) => z))).toBeCloseTo(-depth, 9);
    }
  });
});
