import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balanceStabilityAngle,
  directionMap,
  face,
  pathOverFace,
  peakStabilityRatio,
  rimContactTranslation,
  sphericalSocket,
} from '../../../sims/geometry/index.ts';
import { deepSocket, ordinarySocket, pairOf, real } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { denseMap } from './dense-map.ts';
import { oracleFace } from './face-oracle.ts';
import { anyFaceAndBall, direction, wornPear, type TestFace } from './faces.ts';
import { roundFace } from './round-face.ts';

interface FaceAndBall {
  readonly input: TestFace;
  readonly ballRadius: number;
}

const pear = { kind: 'pear', width: 29, height: 39, upperWidth: 23 } as const;

/** Faces of every kind that the numbers are held against the dense points on, with a ball. */
const reference: readonly (readonly [string, TestFace, number])[] = [
  [
    'an ellipse on a sphere',
    {
      outline: { kind: 'ellipse', width: 28, height: 36 },
      curvatureRadiusAP: 30,
      curvatureRadiusSI: 30,
    },
    26,
  ],
  [
    'an ellipse on a sphere, conforming',
    {
      outline: { kind: 'ellipse', width: 28, height: 36 },
      curvatureRadiusAP: 30,
      curvatureRadiusSI: 30,
    },
    30,
  ],
  ['a pear of two radii', { outline: pear, curvatureRadiusAP: 40, curvatureRadiusSI: 27 }, 24],
  [
    'a pear of two radii, the front the closer fit',
    { outline: pear, curvatureRadiusAP: 26, curvatureRadiusSI: 34 },
    25,
  ],
  ['a pear that is bridged', { outline: pear, curvatureRadiusAP: 24, curvatureRadiusSI: 27 }, 30],
  [
    'a pear with a low lip',
    {
      outline: pear,
      curvatureRadiusAP: 40,
      curvatureRadiusSI: 32,
      labrum: { height: 0.8, width: 4 },
    },
    22,
  ],
  ['a pear with a lip and a cut', wornPear, 24],
  [
    'a pear with a worn segment',
    {
      outline: pear,
      curvatureRadiusAP: 33,
      curvatureRadiusSI: 30,
      defect: { direction: 5.4, depth: 4, kind: 'segment', span: 1.2 },
    },
    24,
  ],
];

/** What the map may leave to be found between its looks. */
const HALF_A_PERCENT = 5e-3;

/** And as a ratio, or an angle in rad, where that is small. */
const LEAST = 2e-3;

/** By how much (rad) a peak may stand above looks that are far apart for a small ball on a steep lip. */
const BETWEEN_LOOKS = 0.1;

describe('directionMap', () => {
  test.each([
    ['ordinary', ordinarySocket],
    ['deep', deepSocket],
  ])('directionMap: a round face is the closed form in every direction, %s', (_, sockets) => {
    fc.assert(
      fc.property(pairOf(sockets), direction, ({ socket, ballRadius }, angle) => {
        const [row] = directionMap(roundFace(socket), ballRadius, {
          directions: [angle],
          translations: 60,
        });
        const ball = Math.min(ballRadius, socket.curvatureRadius);
        const length = { absolute: 1e-6 * socket.width };
        const beta = balanceStabilityAngle(socket);
        expect(row?.direction).toBe(angle);
        expectClose(row?.balanceStabilityAngle ?? NaN, beta, { absolute: 1e-6 });
        expectClose(Math.atan(row?.peakStabilityRatio ?? NaN), beta, { absolute: 1e-6 });
        expectClose(row?.rimContactTranslation ?? NaN, rimContactTranslation(socket, ball), length);
        expectClose(row?.depth ?? NaN, socket.depth, length);
        expectClose(row?.dislocationTranslation ?? NaN, socket.width / 2, length);
      }),
    );
  });

  test('directionMap: a rim that stands upright, or all but, comes to an end', () => {
    for (const [curvatureRadius, width, ballRadius] of [
      [60, 120, 1.2],
      [59.99999941093847, 119.99999882187694, 1.2000004810746714],
      [17.034053735184656, 34.06810705506621, 16.86371321792358],
    ] as const) {
      const socket = sphericalSocket({ curvatureRadius, width });
      const [row] = directionMap(roundFace(socket), ballRadius, {
        directions: [2.14],
        translations: 60,
      });
      expectClose(row?.balanceStabilityAngle ?? NaN, balanceStabilityAngle(socket), {
        absolute: 1e-6,
      });
    }
  });

  test('directionMap: the peak of ordinary sockets to 1e-6 of itself', () => {
    for (const [curvatureRadius, width, ballRadius] of [
      [27, 30, 24],
      [27, 30, 27],
      [27, 30, 26.999],
      [60, 30, 24],
      [100, 30, 1],
      [25, 40, 5],
    ] as const) {
      const socket = sphericalSocket({ curvatureRadius, width });
      const rows = directionMap(roundFace(socket), ballRadius, {
        directions: 24,
        translations: 60,
      });
      for (const row of rows) {
        expectClose(row.peakStabilityRatio, peakStabilityRatio(socket), { relative: 1e-6 });
        expectClose(row.depth, socket.depth, { relative: 1e-6 });
      }
    }
  });

  test.each(reference)('directionMap: %s, within 0.5 % of all points tried', (_, input, ball) => {
    const directions = [0, 0.3, 1.2, 2.2, 3.6, 5.4];
    const rows = directionMap(face(input), ball, { directions, translations: 60 });
    const dense = denseMap(oracleFace(input), ball, directions);
    rows.forEach((row, i) => {
      const other = dense[i];
      const within = { relative: HALF_A_PERCENT };
      expectClose(row.peakStabilityRatio, other?.peakStabilityRatio ?? NaN, within);
      expectClose(row.balanceStabilityAngle, other?.balanceStabilityAngle ?? NaN, within);
      expectClose(row.depth, other?.depth ?? NaN, within);
      expectClose(row.dislocationTranslation, other?.dislocationTranslation ?? NaN, within);
      expectClose(row.rimContactTranslation, other?.rimContactTranslation ?? NaN, {
        relative: HALF_A_PERCENT,
        absolute: 0.01,
      });
    });
  });

  /** Looks closely along one direction and compares what it finds with what the map says of it. */
  function expectNothingMore({ input, ballRadius }: FaceAndBall, angle: number): void {
    const onFace = face(input);
    const [row] = directionMap(onFace, ballRadius, { directions: [angle], translations: 60 });
    const crest = row?.dislocationTranslation ?? NaN;
    const looks = Array.from({ length: 400 }, (_, i) => (crest * i) / 399);
    const path = pathOverFace(onFace, ballRadius, angle, looks);
    const peak = Math.max(0, ...path.map((at) => at.stabilityRatio));
    const depth = Math.max(...path.map((at) => at.climb));
    const found = row?.peakStabilityRatio ?? NaN;
    expect(peak).toBeLessThanOrEqual(found * (1 + HALF_A_PERCENT) + LEAST);
    expect(Math.atan(found)).toBeLessThan(Math.atan(peak) + BETWEEN_LOOKS);
    expect(depth).toBeLessThan((row?.depth ?? NaN) + 1e-9);
  }

  test('directionMap: no look along the way finds more than the map says', () => {
    fc.assert(fc.property(anyFaceAndBall, direction, expectNothingMore), { numRuns: 60 });
  });

  test('directionMap: no look finds more, beside the cut of a steep lip', () => {
    const input: TestFace = {
      outline: { kind: 'ellipse', width: 33.945361345049626, height: 32.44528420302874 },
      curvatureRadiusAP: 25.82649170407461,
      curvatureRadiusSI: 29.950820997648382,
      labrum: { height: 3.9987293403589765, width: 1.375987035769963 },
      defect: {
        direction: 2.8216340528293733,
        depth: 7.9875629107808175,
        kind: 'cut',
        span: 2.277176593978506,
      },
    };
    expectNothingMore({ input, ballRadius: 8.563672556704354 }, 3.3004055671904835);
  });

  test.each(reference)(
    'directionMap: %s, the area under the ratio is the depth',
    (_, input, ball) => {
      const onFace = face(input);
      for (const angle of [0.1, 1.7, 3.3, 5.1]) {
        const [row] = directionMap(onFace, ball, { directions: [angle], translations: 60 });
        // The ratio jumps where the contact goes over to another place, so many plain strips.
        const strips = 4000;
        const width = (row?.dislocationTranslation ?? NaN) / strips;
        const middles = Array.from({ length: strips }, (_, i) => (i + 0.5) * width);
        const path = pathOverFace(onFace, ball, angle, middles);
        const area = path.reduce((sum, at) => sum + at.stabilityRatio * width, 0);
        expectClose(area, row?.depth ?? NaN, { relative: 2e-3 });
      }
    },
  );

  test('directionMap: hardly depends on where it looks', () => {
    fc.assert(
      fc.property(anyFaceAndBall, direction, ({ input, ballRadius }, angle) => {
        const onFace = face(input);
        const mapOf = (translations: number | readonly number[]) =>
          directionMap(onFace, ballRadius, { directions: [angle], translations })[0];
        const usual = mapOf(60);
        for (const looks of [mapOf(300), mapOf([0.1, 3, 4, 8, 12, 1, 2, 5, 6, 7, 9, 10, 11, 40])]) {
          expectClose(looks?.depth ?? NaN, usual?.depth ?? NaN, { relative: 1e-6, absolute: 1e-6 });
          expectClose(looks?.peakStabilityRatio ?? NaN, usual?.peakStabilityRatio ?? NaN, {
            relative: HALF_A_PERCENT,
            absolute: LEAST,
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  test('directionMap: a mirrored face has the mirrored map', () => {
    fc.assert(
      fc.property(anyFaceAndBall, direction, ({ input, ballRadius }, angle) => {
        const mirrored = {
          ...input,
          defect: input.defect && { ...input.defect, direction: Math.PI - input.defect.direction },
        };
        const [there] = directionMap(face(input), ballRadius, {
          directions: [angle],
          translations: 60,
        });
        const [back] = directionMap(face(mirrored), ballRadius, {
          directions: [Math.PI - angle],
          translations: 60,
        });
        expectClose(back?.depth ?? NaN, there?.depth ?? NaN, { absolute: 1e-5 });
        expectClose(back?.balanceStabilityAngle ?? NaN, there?.balanceStabilityAngle ?? NaN, {
          relative: HALF_A_PERCENT,
          absolute: LEAST,
        });
      }),
      { numRuns: 60 },
    );
  });

  test('directionMap: twice the size, twice the lengths, the same ratios', () => {
    const twice: TestFace = {
      outline: { kind: 'pear', width: 58, height: 78, upperWidth: 46 },
      curvatureRadiusAP: 80,
      curvatureRadiusSI: 54,
      labrum: { height: 5, width: 8 },
      defect: { direction: 0.3, depth: 10, kind: 'cut' },
    };
    const options = { directions: 12, translations: 60 };
    const small = directionMap(face(wornPear), 24, options);
    directionMap(face(twice), 48, options).forEach((row, i) => {
      const half = small[i];
      const same = { relative: 1e-5 };
      expectClose(row.peakStabilityRatio, half?.peakStabilityRatio ?? NaN, same);
      expectClose(row.depth, 2 * (half?.depth ?? NaN), same);
      expectClose(row.dislocationTranslation, 2 * (half?.dislocationTranslation ?? NaN), same);
    });
  });

  test('directionMap: a defect takes from its own direction and leaves the far side alone', () => {
    const whole: TestFace = { outline: pear, curvatureRadiusAP: 40, curvatureRadiusSI: 27 };
    const options = { directions: [0, Math.PI], translations: 60 };
    const [front, back] = directionMap(face(whole), 24, options);
    const wornBy = (kind: 'cut' | 'segment') =>
      directionMap(face({ ...whole, defect: { direction: 0, depth: 5, kind } }), 24, options);
    const [cutFront, cutBack] = wornBy('cut');
    const [segmentFront, segmentBack] = wornBy('segment');
    expect(cutFront?.peakStabilityRatio).toBeLessThan(0.75 * (front?.peakStabilityRatio ?? NaN));
    // The ball spans what is worn away in a segment and still leans on its two ends.
    expect(segmentFront?.peakStabilityRatio).toBeLessThan(front?.peakStabilityRatio ?? NaN);
    expect(segmentFront?.peakStabilityRatio).toBeGreaterThan(cutFront?.peakStabilityRatio ?? NaN);
    for (const far of [cutBack, segmentBack]) {
      expectClose(far?.peakStabilityRatio ?? NaN, back?.peakStabilityRatio ?? NaN, {
        relative: 1e-7,
      });
    }
  });

  test('directionMap: a number of directions runs evenly round the face from the front', () => {
    const rows = directionMap(face(wornPear), 24, { directions: 8, translations: 20 });
    rows.forEach((row, i) => expectClose(row.direction, (i * Math.PI) / 4, { absolute: 1e-15 }));
    expect(rows).toHaveLength(8);
  });

  test('directionMap: of a ball that only runs off, nothing holds', () => {
    // Too large for the hollow, it rests on the lower rim and on one end of the cut, and leans toward the cut.
    const onFace = face({
      outline: { kind: 'pear', width: 15, height: 13.5, upperWidth: 7.5 },
      curvatureRadiusAP: 11.1,
      curvatureRadiusSI: 11.1,
      defect: { direction: 2.3, depth: 3.3, kind: 'cut' },
    });
    const [row] = directionMap(onFace, 15, { directions: [1.5], translations: 60 });
    expect(row).toMatchObject({
      peakStabilityRatio: 0,
      balanceStabilityAngle: 0,
      depth: 0,
      dislocationTranslation: 0,
    });
  });

  test.each([
    ['no ball', 0, [0], 60, 'ballRadius is 0; allowed: '],
    ['a ball that is not a number', NaN, [0], 60, 'ballRadius is NaN; allowed: '],
    ['no direction', 24, [], 60, 'directions is ; allowed: a count or a list'],
    ['a direction that is not finite', 24, [0, Infinity], 60, 'directions[1] is Infinity'],
    ['half a direction', 24, 1.5, 60, 'directions is 1.5; allowed: whole numbers'],
    ['two looks', 24, [0], 2, 'translations is 2; allowed: 3 to any larger finite value'],
    ['no looks', 24, [0], [], 'translations is ; allowed: a count or a list'],
    ['a look behind', 24, [0], [0, -1, 3], 'translations is -1; allowed: 0 to any larger'],
  ] as const)('directionMap: refuses %s', (_, ball, directions, translations, message) => {
    const run = (): unknown => directionMap(face(wornPear), ball, { directions, translations });
    expect(run).toThrow(RangeError);
    expect(run).toThrow(message);
  });

  test('directionMap: flatter from front to back holds less that way', () => {
    fc.assert(
      fc.property(real(27, 32), real(1.05, 1.6), real(0.7, 0.95), (radius, flatter, conformity) => {
        const onFace = face({
          outline: { kind: 'circle', width: 28, height: 28 },
          curvatureRadiusAP: radius * flatter,
          curvatureRadiusSI: radius,
        });
        const [anterior, superior] = directionMap(onFace, radius * conformity, {
          directions: [0, Math.PI / 2],
          translations: 60,
        });
        expect(anterior?.peakStabilityRatio).toBeLessThan(superior?.peakStabilityRatio ?? NaN);
        expect(anterior?.depth).toBeLessThan(superior?.depth ?? NaN);
      }),
      { numRuns: 30 },
    );
  });
});
