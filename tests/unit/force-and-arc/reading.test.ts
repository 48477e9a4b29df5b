import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { heldTilts, marginOverTilt } from '../../../sims/benches/force-and-arc/margin.ts';
import { radians, readForce, withTilt } from '../../../sims/benches/force-and-arc/reading.ts';
import {
  defaultSetting,
  forceFields,
  sizeRange,
  tiltRange,
  turnRange,
  type ForceSetting,
} from '../../../sims/benches/force-and-arc/settings.ts';
import { isSituation, situationsOf } from '../../../sims/benches/force-and-arc/situations.ts';
import { pullIds, type PlaneName } from '../../../sims/benches/force-and-arc/planes.ts';
import { restPosition } from '../../../sims/mechanics/index.ts';
import { readUrlState, writeUrlState } from '../../../sims/shared/url-state.ts';

const inDegrees = (angle: number): number => (angle * 180) / Math.PI;
const planeNames: readonly PlaneName[] = ['above', 'front'];

const settings: fc.Arbitrary<ForceSetting> = fc
  .record({
    plane: fc.constantFrom(...planeNames),
    tilt: fc.integer({ min: 2 * tiltRange.min, max: 2 * tiltRange.max }).map((n) => n / 2),
    friction: fc.integer({ min: 0, max: 30 }).map((n) => n / 100),
    depth: fc.integer({ min: 0, max: 45 }).map((n) => n / 10),
    sizes: fc.array(fc.integer({ min: 0, max: sizeRange.max / 5 }), {
      minLength: pullIds.length,
      maxLength: pullIds.length,
    }),
    turns: fc.array(fc.integer({ min: turnRange.min, max: turnRange.max }), {
      minLength: pullIds.length,
      maxLength: pullIds.length,
    }),
  })
  .map(({ plane, tilt, friction, depth, sizes, turns }) => ({
    ...defaultSetting,
    ...Object.fromEntries(
      pullIds.flatMap((id, i) => [
        [`${id}Size`, 5 * (sizes[i] ?? 0)],
        [`${id}Turn`, turns[i] ?? 0],
      ]),
    ),
    plane,
    version: tilt,
    inclination: Math.max(tiltRange.min, 0 - tilt),
    friction,
    depth,
  }));

describe('the force in one plane', () => {
  test('is the plain sum of the pulls, and turning the socket adds to its angle', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const reading = readForce(setting);
        const { plane, pulls, net } = reading;
        let [aside, inward] = [0, 0];
        for (const id of plane.pulls) {
          aside += setting[`${id}Size`] * Math.sin(radians(setting[`${id}Turn`]));
          inward += setting[`${id}Size`] * Math.cos(radians(setting[`${id}Turn`]));
        }
        expect(pulls.map(({ id }) => id)).toEqual(plane.pulls);
        expect(net.aside).toBeCloseTo(aside, 8);
        expect(net.inward).toBeCloseTo(inward, 8);
        if (reading.angle === null) expect(Math.hypot(aside, inward)).toBeLessThan(1e-9);
        else {
          const expected = Math.atan2(aside, inward) + radians(setting[plane.tilt]);
          expect(reading.angle).toBeCloseTo(expected, 9);
        }
      }),
    );
  });

  test('gives the rest position of the closed form, on the side the force points to', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const reading = readForce(setting);
        const { angle, cup, friction, state, translation, margin } = reading;
        if (angle === null || Math.abs(angle) >= Math.PI / 2) return;
        const { socket, ballRadius } = cup;
        const theory = restPosition({ socket, ballRadius, forceAngle: Math.abs(angle), friction });
        expect(state).toBe(theory.state);
        expect(margin).toBeCloseTo(theory.marginAngle, 9);
        if (theory.translation === null) expect(translation).toBeNull();
        else {
          expect(Math.abs(translation ?? NaN)).toBeCloseTo(theory.translation, 8);
          if (theory.translation > 1e-6) expect(Math.sign(translation ?? 0)).toBe(Math.sign(angle));
        }
      }),
    );
  });

  test('leaves a gap of what the contact may still tilt and the ball still move', () => {
    const { gap, halfArc, angle, rimContact, translation } = readForce(defaultSetting);
    expect(inDegrees(angle ?? NaN)).toBeCloseTo(15, 9);
    expect(inDegrees(gap?.angle ?? NaN)).toBeCloseTo(inDegrees(halfArc) - 15, 9);
    expect(gap?.length).toBeCloseTo(rimContact - (translation ?? NaN), 12);
    // A ball of 48 mm on a hollow 28 mm wide and 4 mm deep: R = 26.5 mm, so 2.5 mm of radial mismatch.
    expect(translation).toBeCloseTo(2.5 * Math.sin(radians(15)), 9);
    expect(rimContact).toBeCloseTo((2.5 * 14) / 26.5, 9);
  });

  test('a socket turned back sends the ball back, and one turned up sends it up', () => {
    const back = readForce({ ...defaultSetting, version: 10 });
    const forward = readForce({ ...defaultSetting, version: -10 });
    const up = readForce({ ...defaultSetting, plane: 'front', inclination: 10 });
    expect(back.rest?.place?.[0]).toBeLessThan(0);
    expect(back.translation).toBeGreaterThan(0);
    expect(forward.rest?.place?.[0]).toBeGreaterThan(0);
    expect(forward.translation).toBeCloseTo(-(back.translation ?? NaN), 12);
    expect(up.rest?.place?.[1]).toBeGreaterThan(0);
  });

  test('without any pull there is no force, no angle and no place of rest', () => {
    const reading = readForce({
      ...defaultSetting,
      frontCuffSize: 0,
      backCuffSize: 0,
      othersSize: 0,
    });
    const { state, angle, margin, translation, gap, tiltAtLimit } = reading;
    expect(state).toBe('no force');
    expect([angle, margin, translation, gap, tiltAtLimit]).toEqual([null, null, null, null, null]);
    expect(heldTilts(reading)).toBeNull();
    expect(marginOverTilt(reading, [-10, 10], 5).every((row) => row.reading.margin === null)).toBe(
      true,
    );
  });

  test('a force turned past a right angle pulls the ball off', () => {
    const { state, translation, margin } = readForce({
      ...defaultSetting,
      frontCuffTurn: 80,
      backCuffSize: 0,
      othersSize: 0,
      version: 35,
    });
    expect(state).toBe('pulled off the socket');
    expect(translation).toBeNull();
    expect(margin).toBeLessThan(0);
  });
});

describe('the margin over the tilt', () => {
  test('falls to zero where the force goes over: held a hair before, over a hair after', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const reading = readForce(setting);
        const ends = heldTilts(reading);
        if (ends === null || reading.balanceAngle < 0.01) return;
        const hair = 1e-6;
        for (const [i, end] of ends.entries()) {
          if (Math.abs(end) > 85) continue;
          const inward = i === 0 ? hair : -hair;
          expect(withTilt(reading, radians(end + inward)).translation).not.toBeNull();
          expect(withTilt(reading, radians(end - inward)).translation).toBeNull();
        }
      }),
    );
  });

  test('the limit named is the one on the side the force leans to', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const reading = readForce(setting);
        if (reading.angle === null || reading.tiltAtLimit === null) return;
        const [from, to] = heldTilts(reading) ?? [NaN, NaN];
        const expected = reading.angle < 0 ? from : to;
        expect(inDegrees(reading.tiltAtLimit)).toBeCloseTo(expected, 8);
      }),
    );
  });

  test('rises and falls by one degree with each degree of tilt', () => {
    const rows = marginOverTilt(readForce(defaultSetting), [-25, 35], 61);
    for (const { tilt, reading } of rows) {
      expect(inDegrees(reading.margin ?? NaN)).toBeCloseTo(
        inDegrees(reading.halfArc) - Math.abs(tilt),
        9,
      );
    }
  });
});

describe('the situations', () => {
  test.each(planeNames)('%s: the balanced pull is centred, each is recognised alone', (plane) => {
    const situations = situationsOf(plane);
    const usual = { ...defaultSetting, plane };
    for (const situation of situations) {
      const setting = { ...usual, ...situation.change };
      expect(situations.filter((other) => isSituation(setting, other))).toEqual([situation]);
    }
    const [balanced] = situations;
    const { state, angle } = readForce({ ...usual, ...balanced?.change });
    expect(state).toBe('centred');
    expect(angle).toBe(0);
  });

  test('a weak cuff turns the force to its own side; the tilt turns it back or up', () => {
    const angles = planeNames.map((plane) =>
      situationsOf(plane).map(({ change }) =>
        Math.round(inDegrees(readForce({ ...defaultSetting, plane, ...change }).angle ?? NaN)),
      ),
    );
    expect(angles).toEqual([
      [0, -18, 15, -3, 33],
      [0, 25, 15, 40],
    ]);
    const states = situationsOf('above').map(
      ({ change }) => readForce({ ...defaultSetting, ...change }).state,
    );
    expect(states).toEqual(['centred', 'off-centre', 'off-centre', 'off-centre', 'over the rim']);
  });
});

describe('the link', () => {
  test('of the default setting is empty', () => {
    expect(writeUrlState(forceFields, defaultSetting)).toBe('');
    expect(readUrlState(forceFields, '')).toEqual({ state: defaultSetting, problem: '' });
  });

  test('brings back the whole setting', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const query = writeUrlState(forceFields, setting);
        expect(readUrlState(forceFields, query)).toEqual({ state: setting, problem: '' });
      }),
    );
  });

  test('has a key of its own for everything', () => {
    const keys = Object.values(forceFields).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
