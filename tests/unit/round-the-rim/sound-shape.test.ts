import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rimPoint, surfaceSlope } from '../../../sims/geometry/index.ts';
import { presetOf, presets } from '../../../sims/benches/round-the-rim/presets.ts';
import { rimRanges, type RimField } from '../../../sims/benches/round-the-rim/setting.ts';
import { soundShape } from '../../../sims/benches/round-the-rim/sound-shape.ts';
import { stopReason } from '../../../sims/benches/round-the-rim/stop-reason.ts';
import { anyShape, plainly, shapeWith, wildNumber } from './shapes.ts';

const fields = Object.keys(rimRanges) as RimField[];

describe('a sound shape', () => {
  test('can be had whatever is asked for, within the ranges it names, and asking for it again changes nothing', () => {
    fc.assert(
      fc.property(anyShape, (asked) => {
        const { shape, ranges, message } = soundShape(asked);
        for (const field of fields) {
          expect(ranges[field].min).toBeLessThanOrEqual(ranges[field].max);
          expect(ranges[field].min).toBeGreaterThanOrEqual(rimRanges[field].min);
          expect(ranges[field].max).toBeLessThanOrEqual(rimRanges[field].max);
        }
        const again = soundShape(shape);
        expect(again.message).toBe('');
        expect(again.shape).toEqual(shape);
        if (message === '') {
          for (const field of fields) expect(shape[field]).toBeCloseTo(asked[field], 6);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('takes numbers that are none, and says nothing that is none', () => {
    fc.assert(
      fc.property(anyShape, fc.constantFrom(...fields), wildNumber, (asked, field, wild) => {
        const { shape, message } = soundShape({ ...asked, [field]: wild });
        for (const each of fields) expect(Number.isFinite(shape[each])).toBe(true);
        expect(message).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 100 },
    );
  });

  test('has a rim no steeper than 65°', () => {
    fc.assert(
      fc.property(anyShape, (asked) => {
        const { bare } = soundShape(asked);
        for (let i = 0; i < 36; i++) {
          const { x, y } = rimPoint(bare, (i * Math.PI) / 18);
          const { x: forward, y: up } = surfaceSlope(bare, x * (1 - 1e-9), y * (1 - 1e-9));
          expect(Math.atan(Math.hypot(forward, up))).toBeLessThan((67 * Math.PI) / 180);
        }
      }),
      { numRuns: 60 },
    );
  });

  test.each([
    [
      'a curve too tight',
      { radiusSI: 16 },
      'On so tight a curve the rim would stand nearly upright. The radius top to bottom is set to 19.4 mm.',
    ],
    [
      'a defect past the middle',
      { defect: 'cut', defectDepth: 19 },
      'A defect so deep at 3 o’clock would reach the middle of the face. The depth of the defect is set to 10.6 mm.',
    ],
    [
      'a lip that fills the face',
      { lip: true, lipWidth: 8, width: 14, upperWidth: 10 },
      'So wide a lip would leave no hollow. The lip width is set to 4.7 mm.',
    ],
    [
      'an upper width no pear has',
      { upperWidth: 9 },
      'No pear 26 mm wide has so extreme an upper width. The upper width is set to 12.5 mm.',
    ],
    [
      'a number beyond the control',
      { ballDiameter: 90 },
      'This control goes from 30 to 60. The ball diameter is set to 60.0 mm.',
    ],
  ] as const)('%s is set to the nearest, with a reason', (_, change, message) => {
    expect(plainly(soundShape(shapeWith(change)).message)).toBe(message);
  });

  test('has one radius both ways where one is asked for', () => {
    const { face } = soundShape(shapeWith({ sameRadius: true, radiusSI: 30, radiusAP: 70 }));
    expect([face.curvatureRadiusAP, face.curvatureRadiusSI]).toEqual([30, 30]);
  });

  test('is as high as wide where it is a circle, and keeps the height for later', () => {
    const { face, shape } = soundShape(shapeWith({ outline: 'circle', width: 30 }));
    expect([face.outline.width, face.outline.height]).toEqual([30, 30]);
    expect(shape.height).toBe(35.1);
  });
});

describe('where a control stops', () => {
  test('it says why, but only at an end the other settings hold it to', () => {
    const { ranges } = soundShape(shapeWith({ defect: 'cut' }));
    const { max } = ranges.defectDepth;
    expect(stopReason('defectDepth', max, ranges.defectDepth)).toMatch(/middle of the face/);
    expect(stopReason('defectDepth', max - 1, ranges.defectDepth)).toBeUndefined();
    expect(stopReason('ballDiameter', 60, ranges.ballDiameter)).toBeUndefined();
  });
});

describe('a preset', () => {
  test.each(presets)('$id is had just as it stands', ({ shape, id }) => {
    expect(soundShape(shape).message).toBe('');
    expect(soundShape(shape).shape).toEqual(shape);
    expect(presetOf(shape)?.id).toBe(id);
  });
});
