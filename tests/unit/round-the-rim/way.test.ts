import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { directionMap, pathOverFace, surfaceHeight } from '../../../sims/geometry/index.ts';
import { seatOn } from '../../../sims/benches/round-the-rim/seat.ts';
import type { RimShape } from '../../../sims/benches/round-the-rim/setting.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { eightDirections, rimTable } from '../../../sims/benches/round-the-rim/table.ts';
import {
  heldOn,
  mapOf,
  placeOn,
  playOf,
  translationRange,
  wayIn,
} from '../../../sims/benches/round-the-rim/way.ts';
import { csvText } from '../../../sims/figures/csv.ts';
import { anyShape, shapeWith } from './shapes.ts';

/** mm, at the seven pixels a millimetre that the section is drawn with at its largest. */
const THIRD_OF_A_PIXEL = 0.05;

const bearing = fc.integer({ min: 0, max: 359 });
const bone = soundShape(shapeWith({}));

describe('the seat drawn', () => {
  test('rises by the climb that is computed, and lies on the face', () => {
    fc.assert(
      fc.property(
        anyShape,
        bearing,
        fc.double({ min: -1, max: 1, noNaN: true }),
        (asked, at, share) => {
          const sound = soundShape(asked);
          const { face, ballRadius } = sound;
          const way = wayIn(sound, at);
          const end = share < 0 ? way.opposite : way.here;
          const translation = share * end.dislocationTranslation;
          const seat = seatOn(face, ballRadius, way.direction, translation);
          const rest = seatOn(face, ballRadius, way.direction, 0);
          const [row] = pathOverFace(face, ballRadius, way.direction, [translation]);
          // Between two points of the rim the seat follows a chord: the bulge of half a degree of rim.
          expect(Math.abs(seat.centre.z - rest.centre.z - (row?.climb ?? NaN))).toBeLessThan(0.02);
          const { x, y, z } = seat.contact;
          expect(Math.hypot(x - seat.centre.x, y - seat.centre.y, z - seat.centre.z)).toBeCloseTo(
            ballRadius,
            3,
          );
          const apart = Math.abs(surfaceHeight(sound.whole, x * 0.9999, y * 0.9999) - z);
          expect(apart).toBeLessThan(THIRD_OF_A_PIXEL);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('touches where the slope is the ratio', () => {
    const { face, ballRadius } = bone;
    for (const translation of [1, 3, 4.5, 8, 12]) {
      const { centre, contact } = seatOn(face, ballRadius, 0, translation);
      const [row] = pathOverFace(face, ballRadius, 0, [translation]);
      expect((contact.x - centre.x) / (centre.z - contact.z)).toBeCloseTo(
        row?.stabilityRatio ?? NaN,
        3,
      );
    }
  });
});

describe('the way out', () => {
  test('runs from dislocation to dislocation and meets the rim on it', () => {
    fc.assert(
      fc.property(anyShape, bearing, (asked, at) => {
        const sound = soundShape(asked);
        const way = wayIn(sound, at);
        expect(way.out[0]?.translation).toBe(0);
        expect(way.out.at(-1)?.translation).toBeCloseTo(way.here.dislocationTranslation, 9);
        expect(way.back[0]?.translation).toBeCloseTo(-way.opposite.dislocationTranslation, 9);
        expect(way.back.at(-1)?.translation).toBeCloseTo(0, 12);
        expect(way.out.some(({ translation }) => translation === playOf(way.here))).toBe(true);
        expect(way.out.at(-1)?.climb).toBeCloseTo(way.here.depth, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('holds the ball between the two dislocations, in steps that meet the middle', () => {
    const way = wayIn(bone, 0);
    const { min, max, step } = translationRange(way);
    expect(heldOn(way, 99)).toBe(max);
    expect(heldOn(way, -99)).toBe(min);
    expect(heldOn(way, 1.23)).toBe(1.23);
    expect(way.here.dislocationTranslation - max).toBeGreaterThanOrEqual(0);
    expect(way.here.dislocationTranslation - max).toBeLessThan(step);
    expect(min / step).toBeCloseTo(Math.round(min / step), 9);
    expect(placeOn(bone, way, 99).climb).toBeCloseTo(way.here.depth, 4);
  });
});

describe('the map', () => {
  test('names the weakest and the strongest of its directions, ties together', () => {
    const { rows, weakest, strongest } = mapOf(bone);
    const ratios = rows.map((row) => row.peakStabilityRatio);
    expect(rows).toHaveLength(72);
    expect(weakest.map((row) => row.peakStabilityRatio)).toContain(Math.min(...ratios));
    expect(strongest.map((row) => row.peakStabilityRatio)).toContain(Math.max(...ratios));
    // A whole pear is the same in front as behind.
    expect(weakest).toHaveLength(2);
    const round = mapOf(
      soundShape(shapeWith({ outline: 'circle', sameRadius: true, radiusSI: 30 })),
    );
    expect(round.weakest).toHaveLength(72);
  });

  test('of a whole face mirrors one half, and is what every direction by itself gives', () => {
    for (const change of [{}, { lip: true }, { defect: 'cut', clock: 4.5 }] as const) {
      const sound = soundShape(shapeWith(change));
      mapOf(sound).rows.forEach((row, i) => {
        expect(row.direction).toBeCloseTo((i * Math.PI) / 36, 12);
        const [alone] = directionMap(sound.face, sound.ballRadius, {
          directions: [row.direction],
          translations: 60,
        });
        for (const field of ['peakStabilityRatio', 'depth', 'dislocationTranslation'] as const) {
          expect(row[field]).toBeCloseTo(alone?.[field] ?? NaN, 5);
        }
      });
    }
  });

  /** What the map may leave to be found between its looks. */
  const HALF_A_PERCENT = 5e-3;

  /** And as a ratio, where it is small. */
  const LEAST = 2e-3;

  function expectNothingNearer(asked: RimShape): void {
    const sound = soundShape(asked);
    const rows = mapOf(sound).rows.filter((_, i) => i % 5 === 0);
    const close = directionMap(sound.face, sound.ballRadius, {
      directions: rows.map(({ direction }) => direction),
      translations: 300,
    });
    rows.forEach(({ peakStabilityRatio }, i) => {
      const nearer = close[i]?.peakStabilityRatio ?? NaN;
      const apart = Math.abs(peakStabilityRatio - nearer);
      expect(apart).toBeLessThanOrEqual(HALF_A_PERCENT * nearer + LEAST);
    });
  }

  test('gives the ratios of a look five times as close, to half a percent', () => {
    fc.assert(fc.property(anyShape, expectNothingNearer), { numRuns: 25 });
  });

  test('does so beside the cut of a steep lip', () => {
    expectNothingNearer(
      shapeWith({
        outline: 'pear',
        height: 31.2,
        width: 43.1,
        upperWidth: 38.6,
        sameRadius: true,
        radiusAP: 16,
        radiusSI: 16,
        lip: true,
        lipHeight: 0.9,
        lipWidth: 1,
        defect: 'cut',
        clock: 1.5,
        defectDepth: 0.5,
        ballDiameter: 41.6,
      }),
    );
  });
});

describe('the table', () => {
  test('has eight directions, and the chosen one in its place', () => {
    const turned = eightDirections(bone, wayIn(bone, 100)).map(({ direction }) =>
      Math.round((direction * 180) / Math.PI),
    );
    expect(turned).toEqual([0, 45, 90, 100, 135, 180, 225, 270, 315]);
    expect(eightDirections(bone, wayIn(bone, 90))).toHaveLength(8);
  });

  test('as a file: 72 directions, units in its head', () => {
    const lines = csvText(rimTable(bone)).trimEnd().split('\r\n');
    expect(lines).toHaveLength(73);
    expect(lines[0]).toBe(
      'direction (°),direction in words,peak stability ratio (no unit),balance stability angle (°),' +
        'play before the rim (mm),depth (mm),travel to dislocation (mm)',
    );
    expect(lines[1]).toMatch(/^0,forward,0\.32\d+,18\.\d+,5\.2\d+,2\.0\d+,12\.9\d+$/);
    expect(lines[28]).toMatch(/^135,backward and up,/);
  });
});
