import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  climbAt,
  directionMap,
  face,
  pathOverFace,
  profilePath,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';
import { deepSocket, fraction, ordinarySocket, pairOf, real } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { anyFaceAndBall, direction, wornPear } from './faces.ts';
import { roundFace } from './round-face.ts';

describe('pathOverFace', () => {
  test.each([
    ['ordinary', ordinarySocket],
    ['deep', deepSocket],
  ])('pathOverFace: a round face is the closed form, %s sockets', (_, sockets) => {
    fc.assert(
      fc.property(pairOf(sockets), direction, fraction, ({ socket, ballRadius }, angle, share) => {
        const translation = share * (socket.width / 2);
        const [row] = pathOverFace(roundFace(socket), ballRadius, angle, [translation]);
        const ball = Math.min(ballRadius, socket.curvatureRadius);
        expectClose(row?.climb ?? NaN, climbAt(socket, ball, translation), {
          absolute: 1e-6 * socket.width,
        });
        const tilt = Math.atan(stabilityRatioAt(socket, ball, translation));
        expectClose(Math.atan(row?.stabilityRatio ?? NaN), tilt, { absolute: 1e-6 });
      }),
    );
  });

  test('pathOverFace: a ball that lies on the whole ring of a lip rests there, not on the bottom it bridges', () => {
    const wide = face({
      outline: { kind: 'circle', width: 18, height: 18 },
      curvatureRadiusAP: 64.6,
      curvatureRadiusSI: 64.6,
      labrum: { height: 1.7, width: 6.7 },
    });
    const hair = 1e-6;
    const [, row] = pathOverFace(wide, 15.05, 0, [0, hair]);
    // It rides up a slope of about a third: over the ring, not out of the bottom onto it.
    expectClose(row?.climb ?? NaN, (row?.stabilityRatio ?? NaN) * hair, { absolute: 1e-11 });
    const [out] = directionMap(wide, 15.05, { directions: 1, translations: 60 });
    const end = out?.dislocationTranslation ?? NaN;
    const rows = pathOverFace(wide, 15.05, 0, 2001).filter(({ translation }) => translation <= end);
    const area = rows.reduce((sum, { translation, stabilityRatio }, n) => {
      const before = rows[n - 1];
      if (before === undefined) return sum;
      const width = translation - before.translation;
      return sum + (width * (stabilityRatio + before.stabilityRatio)) / 2;
    }, 0);
    expectClose(area, out?.depth ?? NaN, { relative: 1e-4 });
  });

  test('pathOverFace: a round face with a lip is its section rolled over', () => {
    const labrum = { height: 1.2, width: 4 };
    const round = face({
      outline: { kind: 'circle', width: 30, height: 30 },
      curvatureRadiusAP: 32,
      curvatureRadiusSI: 32,
      labrum,
    });
    const places = 60_001;
    const section = Array.from({ length: places }, (_, i) => {
      const x = 30 * (i / (places - 1) - 0.5);
      const onLip = Math.max(0, Math.abs(x) - 11) / 4;
      return { x, z: 32 - Math.sqrt(32 ** 2 - x * x) + 1.2 * onLip };
    });
    const translations = Array.from({ length: 61 }, (_, i) => i * 0.25);
    for (const ballRadius of [12, 20, 28, 31.5, 36]) {
      const rolled = profilePath(section, ballRadius, translations);
      for (const angle of [0, 1.1]) {
        pathOverFace(round, ballRadius, angle, translations).forEach((row, i) => {
          expectClose(row.climb, rolled[i]?.climb ?? NaN, { absolute: 1e-6 });
          expectClose(row.stabilityRatio, rolled[i]?.stabilityRatio ?? NaN, { absolute: 1e-3 });
        });
      }
    }
  });

  test('pathOverFace: a negative translation is one in the opposite direction', () => {
    fc.assert(
      fc.property(anyFaceAndBall, direction, real(0.01, 4), ({ input, ballRadius }, angle, t) => {
        const onFace = face(input);
        const [back] = pathOverFace(onFace, ballRadius, angle, [-t]);
        const [there] = pathOverFace(onFace, ballRadius, angle + Math.PI, [t]);
        expect(back?.translation).toBe(-t);
        expectClose(back?.climb ?? NaN, there?.climb ?? NaN, { absolute: 1e-9 });
        expectClose(back?.stabilityRatio ?? NaN, there?.stabilityRatio ?? NaN, { absolute: 1e-9 });
      }),
    );
  });

  test('pathOverFace: a ball larger than the hollow rests on the rim on both sides', () => {
    const round = roundFace({ curvatureRadius: 25, width: 30, halfArc: 0, depth: 0 });
    const [rest, aside, crest] = pathOverFace(round, 39, 0.7, [0, 15 - 9, 15]);
    // 5-12-13 times three: the rim is 15 ahead of the centre, 36 below it.
    expectClose(rest?.stabilityRatio ?? NaN, 15 / 36, { relative: 1e-9 });
    expectClose(aside?.stabilityRatio ?? NaN, 9 / Math.sqrt(39 ** 2 - 81), { relative: 1e-9 });
    expectClose(crest?.climb ?? NaN, 39 - 36, { relative: 1e-9 });
  });

  test('pathOverFace: a count of rows ends where the climb is highest', () => {
    const pear = face(wornPear);
    const rows = pathOverFace(pear, 24, 0.3, 40);
    const [map] = directionMap(pear, 24, { directions: [0.3], translations: 60 });
    expect(rows).toHaveLength(40);
    expect(rows[0]).toMatchObject({ translation: 0, climb: 0 });
    const last = rows.at(-1);
    expectClose(last?.translation ?? NaN, map?.dislocationTranslation ?? NaN, { absolute: 1e-6 });
    expectClose(last?.climb ?? NaN, map?.depth ?? NaN, { absolute: 1e-9 });
    expectClose(last?.stabilityRatio ?? NaN, 0, { absolute: 1e-6 });
  });

  test('pathOverFace: past the crest the ratio is negative', () => {
    const pear = face(wornPear);
    const [row] = pathOverFace(pear, 24, 2, [25]);
    expect(row?.stabilityRatio).toBeLessThan(0);
  });

  test('pathOverFace: refuses what cannot be', () => {
    const pear = face(wornPear);
    expect(() => pathOverFace(pear, 0, 0, [0])).toThrow('ballRadius is 0; allowed: ');
    expect(() => pathOverFace(pear, 24, NaN, [0])).toThrow('direction is NaN; allowed: ');
    expect(() => pathOverFace(pear, 24, 0, [50])).toThrow('translations is 50; allowed: ');
    expect(() => pathOverFace(pear, 24, 0, [0, -60])).toThrow('translations is -60; allowed: ');
    expect(() => pathOverFace(pear, 24, 0, 2)).toThrow('translations is 2; allowed: ');
  });
});
