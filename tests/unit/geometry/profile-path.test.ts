import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ballPath,
  climbAt,
  profilePath,
  sphericalSocket,
  stabilityRatioAt,
  type ProfilePoint,
  type SphericalSocket,
} from '../../../sims/geometry/index.ts';
import { ordinarySocket, real } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { integrate } from './oracles.ts';

const flat: readonly ProfilePoint[] = [
  { x: -10, z: 0 },
  { x: 10, z: 0 },
];

/** A V of slope 3/4 each way, 8 mm to either side. */
const groove: readonly ProfilePoint[] = [
  { x: -8, z: 6 },
  { x: 0, z: 0 },
  { x: 8, z: 6 },
];

function sampled(socket: SphericalSocket, count: number): readonly ProfilePoint[] {
  const { curvatureRadius: R, width } = socket;
  return Array.from({ length: count }, (_, i) => {
    const x = width * (i / (count - 1) - 0.5);
    return { x, z: R - Math.sqrt(Math.max(0, R * R - x * x)) };
  });
}

const evenly = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** Random hills and hollows. */
const anyProfile = fc
  .array(fc.tuple(real(0.2, 6), real(-3, 3)), { minLength: 3, maxLength: 12 })
  .map((steps) => {
    let x = -15;
    return steps.map(([dx, z]) => ({ x: (x += dx), z }));
  })
  .filter((profile) => (profile.at(-1)?.x ?? 0) > 1);

describe('profilePath', () => {
  test('profilePath: a flat of two points is exact up to its ends and beyond', () => {
    const rows = profilePath(flat, 6, [-12, -10, -3, 0, 4, 10, 13.6]);
    expect(rows.slice(1, 6).map((row) => row.climb)).toStrictEqual([0, 0, 0, 0, 0]);
    expect(rows.slice(1, 6).map((row) => row.stabilityRatio)).toStrictEqual([0, 0, 0, 0, 0]);
    // 3-4-5: the ball hangs on the end 3.6 mm behind its centre, 4.8 mm below it.
    const last = rows[6];
    expectClose(last?.climb ?? NaN, 4.8 - 6, { absolute: 1e-12 });
    expectClose(last?.stabilityRatio ?? NaN, -0.75, { relative: 1e-12 });
    expect(last?.contact).toStrictEqual({ x: 10, z: 0 });
  });

  test('profilePath: a groove bridged on both sides resists with its slope at once', () => {
    const [rest, aside] = profilePath(groove, 5, [0, 2]);
    expectClose(rest?.stabilityRatio ?? NaN, 0.75, { relative: 1e-14 });
    expectClose(aside?.climb ?? NaN, 1.5, { relative: 1e-14 });
    // r sin α = 3 ahead of the centre.
    expectClose(rest?.contact.x ?? NaN, 3, { relative: 1e-14 });
    expectClose(aside?.contact.x ?? NaN, 5, { relative: 1e-14 });
    expectClose(aside?.contact.z ?? NaN, 3.75, { relative: 1e-14 });
  });

  test('profilePath: outward is to the left on the left', () => {
    const [left, right] = profilePath(groove, 5, [-2, 2]);
    expect(left?.stabilityRatio).toBe(right?.stabilityRatio);
    expect(left?.climb).toBe(right?.climb);
    expectClose(left?.contact.x ?? NaN, -5, { relative: 1e-14 });
  });

  test('profilePath: past the crest the ratio is negative', () => {
    const rows = profilePath(groove, 5, [7.9, 8, 8.1, 12]);
    const ratios = rows.map((row) => row.stabilityRatio);
    expect(ratios[0]).toBeGreaterThan(0);
    expectClose(ratios[1] ?? NaN, 0, { absolute: 1e-14 });
    expect(ratios[2]).toBeLessThan(0);
    expect(ratios[3]).toBeLessThan(-1);
    expectClose(rows[1]?.climb ?? NaN, 6 - (6.25 - 5), { relative: 1e-14 });
  });

  test('profilePath: beside a lone end the slope is infinite, never NaN', () => {
    const rows = profilePath(flat, 6, [-16, 16]);
    expect(rows.map((row) => row.stabilityRatio)).toStrictEqual([-Infinity, -Infinity]);
    expect(rows.map((row) => row.climb)).toStrictEqual([-6, -6]);
  });

  test('profilePath: a dense spherical socket converges to the closed forms', () => {
    const socket = sphericalSocket({ curvatureRadius: 27, width: 30 });
    for (const ballRadius of [8, 24, 26.5]) {
      const translations = evenly(0, 15, 101);
      const errors = [200, 2000, 20_000].map((count) => {
        const rows = profilePath(sampled(socket, count), ballRadius, translations);
        return {
          climb: Math.max(
            ...rows.map((row) =>
              Math.abs(row.climb - climbAt(socket, ballRadius, row.translation)),
            ),
          ),
          ratio: Math.max(
            ...rows.map((row) =>
              Math.abs(row.stabilityRatio - stabilityRatioAt(socket, ballRadius, row.translation)),
            ),
          ),
        };
      });
      // The chord of a circle errs by the square of its length in height, by its length in slope.
      expect(errors[2]?.climb).toBeLessThan(1e-7);
      expect(errors[2]?.ratio).toBeLessThan(1e-3);
      expect(errors[2]?.climb).toBeLessThan((errors[1]?.climb ?? NaN) / 20);
      expect(errors[1]?.climb).toBeLessThan((errors[0]?.climb ?? NaN) / 20);
      expect(errors[2]?.ratio).toBeLessThan((errors[1]?.ratio ?? NaN) / 3);
    }
  });

  test('profilePath: a conforming ball on a dense socket starts at the greatest ratio', () => {
    const socket = sphericalSocket({ curvatureRadius: 27, width: 30 });
    const [rest] = profilePath(sampled(socket, 20_001), 27, [0]);
    expectClose(rest?.stabilityRatio ?? NaN, Math.tan(socket.halfArc), { relative: 2e-4 });
  });

  test('profilePath: no place of a profile of any shape is inside the ball, and one is on it', () => {
    fc.assert(
      fc.property(anyProfile, real(1, 12), real(0, 1), (profile, r, share) => {
        const first = profile[0]?.x ?? NaN;
        const last = profile.at(-1)?.x ?? NaN;
        const translation = first + share * (last - first);
        const [rest, row] = profilePath(profile, r, [0, translation]);
        // Height of the centre above the profile's z = 0, from the contact that is named.
        const contact = row?.contact ?? { x: NaN, z: NaN };
        const centre = contact.z + Math.sqrt(r * r - (contact.x - translation) ** 2);
        let nearest = Infinity;
        profile.slice(1).forEach((to, i) => {
          const from = profile[i] ?? to;
          for (const v of evenly(0, 1, 400)) {
            const x = from.x + (to.x - from.x) * v;
            const z = from.z + (to.z - from.z) * v;
            if (Math.abs(x - translation) > r) continue;
            nearest = Math.min(nearest, Math.hypot(x - translation, z - centre));
          }
        });
        expect(nearest).toBeGreaterThan(r * (1 - 1e-9));
        expect(nearest).toBeLessThan(r + 1e-3);
        const restCentre =
          (rest?.contact.z ?? NaN) + Math.sqrt(r * r - (rest?.contact.x ?? NaN) ** 2);
        expectClose(row?.climb ?? NaN, centre - restCentre, { absolute: 1e-9 });
      }),
    );
  });

  test('profilePath: the ratio lies between the slopes of the climb on either side', () => {
    fc.assert(
      fc.property(anyProfile, real(2, 12), real(0.02, 0.98), (profile, r, share) => {
        const last = profile.at(-1)?.x ?? NaN;
        const x = last * share;
        const h = 1e-5;
        const rows = profilePath(profile, r, [x - h, x, x + h]);
        const [before, here, after] = rows.map((row) => row.climb) as [number, number, number];
        const slopes = [(here - before) / h, (after - here) / h];
        const ratio = rows[1]?.stabilityRatio ?? NaN;
        const slack = 1e-3 * (1 + ratio * ratio);
        expect(ratio).toBeGreaterThan(Math.min(...slopes) - slack);
        expect(ratio).toBeLessThan(Math.max(...slopes) + slack);
      }),
    );
  });

  test('profilePath: the area under the ratio is the climb', () => {
    fc.assert(
      fc.property(ordinarySocket, real(0.3, 0.95), (socket, conformity) => {
        const r = socket.curvatureRadius * conformity;
        const profile = sampled(socket, 201);
        const end = socket.width / 2;
        const area = integrate(
          (x) => profilePath(profile, r, [x])[0]?.stabilityRatio ?? NaN,
          0,
          end,
        );
        const climb = profilePath(profile, r, [end])[0]?.climb ?? NaN;
        expectClose(area, climb, { relative: 2e-3 });
      }),
      { numRuns: 10 },
    );
  });

  test('profilePath: mirrored, the same the other way', () => {
    fc.assert(
      fc.property(anyProfile, real(2, 12), real(0.05, 1), (profile, r, share) => {
        const x = (profile.at(-1)?.x ?? NaN) * share;
        const mirrored = [...profile].reverse().map((point) => ({ x: -point.x, z: point.z }));
        const [there] = profilePath(profile, r, [x]);
        const [back] = profilePath(mirrored, r, [-x]);
        expectClose(back?.climb ?? NaN, there?.climb ?? NaN, { absolute: 1e-12 });
        expectClose(back?.stabilityRatio ?? NaN, there?.stabilityRatio ?? NaN, { absolute: 1e-9 });
      }),
    );
  });

  test('profilePath: a count gives rows from the middle to the last x', () => {
    const rows = profilePath(groove, 5, 5);
    expect(rows.map((row) => row.translation)).toStrictEqual([0, 2, 4, 6, 8]);
  });

  test('profilePath: the same rows as the ball path of a socket', () => {
    const socket = sphericalSocket({ curvatureRadius: 30, width: 34 });
    const path = ballPath(socket, 25, 40);
    const rows = profilePath(
      sampled(socket, 40_001),
      25,
      path.map((row) => row.translation),
    );
    rows.forEach((row, i) => {
      expectClose(row.climb, path[i]?.climb ?? NaN, { absolute: 1e-7 });
      expectClose(row.stabilityRatio, path[i]?.stabilityRatio ?? NaN, { absolute: 1e-4 });
    });
  });

  test('profilePath: leaves its profile alone', () => {
    const frozen = Object.freeze(groove.map((point) => Object.freeze({ ...point })));
    profilePath(frozen, 5, Object.freeze([0, 1, 2]));
    expect(frozen).toStrictEqual(groove);
  });

  test.each([
    ['one point', [{ x: 0, z: 0 }], 5, [0], 'profile has 1 points; allowed: 2 and more'],
    [
      'x falling',
      [...groove, { x: 7, z: 0 }],
      5,
      [0],
      'profile[3].x is 7; allowed: finite values above 8',
    ],
    [
      'x standing',
      [
        { x: 0, z: 0 },
        { x: 0, z: 1 },
      ],
      5,
      [0],
      'profile[1].x is 0; allowed: finite values above 0',
    ],
    [
      'z not finite',
      [
        { x: 0, z: NaN },
        { x: 1, z: 1 },
      ],
      5,
      [0],
      'profile[0].z is NaN; allowed: finite values',
    ],
    ['no ball', groove, 0, [0], 'ballRadius is 0; allowed: any finite value above 0'],
    ['off the end', flat, 6, [16.1], 'translations is 16.1; allowed: -16 to 16 mm'],
    ['not a number', flat, 6, [0, NaN], 'translations[1] is NaN; allowed: finite numbers'],
    ['an empty list', flat, 6, [], 'translations is ; allowed: a count or a list'],
    ['too few', flat, 6, 2, 'translations is 2; allowed: 3 to any larger'],
    ['a broken count', flat, 6, 3.5, 'translations is 3.5; allowed: whole numbers from 3 up'],
    [
      'nothing under the middle',
      [
        { x: 9, z: 0 },
        { x: 12, z: 0 },
      ],
      5,
      [10],
      'translations is 0; allowed: 4 to 17 mm',
    ],
  ] as const)('profilePath: refuses %s', (_, profile, ball, translations, message) => {
    const run = (): unknown => profilePath(profile, ball, translations);
    expect(run).toThrow(RangeError);
    expect(run).toThrow(message);
  });
});
