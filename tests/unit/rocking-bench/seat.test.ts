import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { posedByTheory } from '../../../sims/benches/rocking-bench/posed.ts';
import {
  angleAt,
  hollowOf,
  loadAt,
  placesOf,
  seatOf,
  yieldsAt,
} from '../../../sims/benches/rocking-bench/seat.ts';
import {
  defaultSetting,
  flat,
  ranges,
  rockingFields,
  spacingRange,
  unflat,
  type RockingSetting,
} from '../../../sims/benches/rocking-bench/settings.ts';
import { boneNames, boneOf, boneWithModulus, rockingTest } from '../../../sims/mechanics/index.ts';
import { planeSprings } from '../../../sims/physics/rocking-plane.ts';
import { readUrlState, writeUrlState } from '../../../sims/shared/url-state.ts';
import { settings } from './settings.ts';
import { expectClose } from '../geometry/close.ts';

describe('the setting', () => {
  test('goes into a link and comes back', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { state, problem } = readUrlState(
          rockingFields,
          writeUrlState(rockingFields, flat(setting)),
        );
        expect(problem).toBe('');
        expect(unflat(state)).toEqual(setting);
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  test('leaves the default out of the link, and names what it does not take', () => {
    expect(writeUrlState(rockingFields, flat(defaultSetting))).toBe('');
    const { state, problem } = readUrlState(rockingFields, 'press=9999&a-back=glue');
    expect(unflat(state)).toEqual(defaultSetting);
    expect(problem).toMatch(/press “9999” \(allowed: 50 to 1000 N\).*A, back “glue”/);
  });
});

test.each(boneNames)('%s can be set, goes into a link and is known again', (name) => {
  const { modulus } = boneOf(name);
  const { min, max, step } = ranges.modulus;
  expect(modulus).toBeGreaterThanOrEqual(min);
  expect(modulus).toBeLessThanOrEqual(max);
  expect((modulus - min) % step).toBe(0);
  const link = writeUrlState(rockingFields, flat({ ...defaultSetting, modulus }));
  expect(boneWithModulus(readUrlState(rockingFields, link).state.modulus)).toBe(name);
});

describe('a seat', () => {
  test('of any setting is balanced about its plane, and its pegs stand on the back', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const seat = seatOf(setting, setting.a);
        for (const plane of ['top–bottom', 'front–back'] as const) {
          expect(() => planeSprings(seat.elements, plane)).not.toThrow();
        }
        const range = spacingRange(setting, setting.a);
        expect(range.min).toBeLessThanOrEqual(range.max);
        for (const [x, y] of placesOf(setting, setting.a)) {
          const [a, b] = [setting.width / 2, setting.height / 2];
          expect((x / a) ** 2 + (y / b) ** 2).toBeLessThan(1);
        }
      }),
      { seed: 4, numRuns: 60 },
    );
  });

  test.each([
    ['none', 0, 0],
    ['one', 1, 1],
    ['upright', 2, 2],
    ['level', 1, 1],
    ['four', 2, 2],
    ['keel', 8, 1],
  ] as const)('%s: %i holds and %i stems seen from top to bottom', (layout, holds, stems) => {
    const seat = seatOf(defaultSetting, { ...defaultSetting.a, layout });
    expect(seat.holds).toHaveLength(holds);
    expect(seat.stems).toHaveLength(stems);
    const strength = seat.elements
      .filter(({ tension }) => tension === 'limited')
      .reduce((sum, element) => sum + (element.strength ?? NaN), 0);
    expectClose(
      seat.holds.reduce((sum, hold) => sum + hold.strength, 0),
      strength,
      { relative: 1e-12, absolute: 1e-12 },
    );
  });
});

test('the load goes through the middle of the ball, from the place where it touches', () => {
  const { force, point } = loadAt(defaultSetting);
  const angle = angleAt(defaultSetting);
  const { curvatureRadius, halfArc } = hollowOf(defaultSetting);
  expectClose(Math.sin(angle), 0.9 * Math.sin(halfArc), { relative: 1e-12 });
  expectClose(-force[1] / force[2], Math.tan(angle), { relative: 1e-12 });
  // Back along the load from the contact lies the middle of the hollow.
  expectClose(point[1] + (force[1] / force[2]) * (curvatureRadius - point[2]), 0, {
    absolute: 1e-9,
  });
});

test('bone that yields: one peg on it is carried to a press, and not beyond; on bone that does not, to any', () => {
  const at = (press: number, yields: boolean) => {
    const setting = { ...defaultSetting, press, yields };
    return posedByTheory(setting, seatOf(setting, setting.a)).state;
  };
  const most = (yields: boolean): number => {
    const setting = { ...defaultSetting, yields };
    const { elements } = seatOf(setting, setting.b);
    return rockingTest({ seat: { elements }, load: loadAt(setting), cycles: 0 }).greatestLoad;
  };
  expect(yieldsAt(defaultSetting)).toBeUndefined();
  expect(yieldsAt({ ...defaultSetting, yields: true })).toBe(8.4);
  expect([at(300, true), at(300, false), at(30_000, false)]).toEqual([
    'at rest',
    'at rest',
    'at rest',
  ]);
  expect(at(30_000, true)).not.toBe('at rest');
  expect(most(false)).toBe(Infinity);
  expect(most(true)).toBeGreaterThan(500);
  expect(most(true)).toBeLessThan(10_000);
});

test('by theory: at rest where something holds, slid or tipped to the side of the ball where nothing does', () => {
  const stand = (change: Partial<RockingSetting['a']>, place = 90) => {
    const setting = { ...defaultSetting, place };
    return posedByTheory(setting, seatOf(setting, { ...setting.a, ...change }));
  };
  expect(stand({}).state).toBe('at rest');
  expect(stand({ layout: 'upright' }).liftOff).toBeLessThan(stand({}).liftOff);
  const slid = stand({ layout: 'none' }, -90);
  expect(slid.state).toBe('sliding');
  expect(slid.pose.x).toBeLessThan(0);
  const tipped = stand({ layout: 'none', bed: 'rough' });
  expect(tipped.state).toBe('overturned');
  expect(tipped.pose.turn).toBeLessThan(0);
});
