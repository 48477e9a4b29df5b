import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { climbAt, peakStabilityRatio, radialMismatch } from '../../../sims/geometry/index.ts';
import {
  allowedRange,
  cupFrom,
  cupRanges,
  defaultCup,
  switchShapeBy,
  type CupField,
  type CupSetting,
  type ShapeBy,
} from '../../../sims/benches/shared/cup-setting.ts';

const shapes: readonly ShapeBy[] = ['depth', 'radius', 'mismatch'];
const onSteps = (field: CupField) => {
  const { min, max, step } = cupRanges[field];
  return fc
    .integer({ min: 0, max: Math.round((max - min) / step) })
    .map((steps) => Number((min + steps * step).toFixed(6)));
};
const settings: fc.Arbitrary<CupSetting> = fc.record({
  ballDiameter: onSteps('ballDiameter'),
  width: onSteps('width'),
  shapeBy: fc.constantFrom(...shapes),
  depth: onSteps('depth'),
  radius: onSteps('radius'),
  mismatch: onSteps('mismatch'),
});

describe('the setting made real', () => {
  test('the default is taken as it stands', () => {
    const { socket, ballRadius, shape, message } = cupFrom(defaultCup);
    expect(message).toBe('');
    expect(ballRadius).toBe(24);
    expect(socket.depth).toBeCloseTo(4, 12);
    expect(shape.radius).toBeCloseTo(defaultCup.radius, 12);
    expect(shape.mismatch).toBeCloseTo(defaultCup.mismatch, 12);
  });

  test('every combination of the controls is a socket the ball fits, no deeper than the control goes', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { socket, ballRadius } = cupFrom(setting);
        expect(radialMismatch(socket, ballRadius)).toBeGreaterThanOrEqual(0);
        expect(socket.depth).toBeLessThanOrEqual(cupRanges.depth.max + 1e-9);
        expect(climbAt(socket, ballRadius, socket.width / 2)).toBeCloseTo(socket.depth, 9);
        expect(peakStabilityRatio(socket)).toBeLessThan(1e9);
      }),
      { numRuns: 2000 },
    );
  });

  test('only the field that is the knob counts', () => {
    fc.assert(
      fc.property(settings, settings, (setting, other) => {
        const { shapeBy } = setting;
        const sameKnob = { ...other, ...setting, [shapeBy]: setting[shapeBy] };
        const others = shapes.filter((by) => by !== shapeBy);
        const changed = { ...sameKnob, ...Object.fromEntries(others.map((by) => [by, other[by]])) };
        expect(cupFrom(changed)).toEqual(cupFrom(setting));
      }),
    );
  });

  test('a shape that cannot be is the nearest that can, with a sentence', () => {
    const { socket, message } = cupFrom({ ...defaultCup, depth: 9 });
    // 24 − √(24² − 14²) = 4.506 mm is the conforming depth.
    expect(socket.depth).toBeCloseTo(4.5, 9);
    expect(message).toBe(
      'A ball of 48 mm would not reach the bottom of so tight a curve 28 mm wide. The depth is set to 4.5 mm.',
    );
    const wide: CupSetting = {
      ...defaultCup,
      ballDiameter: 30,
      width: 46,
      shapeBy: 'radius',
      radius: 20,
    };
    // (23² + 14²) / 28 = 25.89 mm is where the depth reaches 14 mm.
    expect(cupFrom(wide).socket.curvatureRadius).toBe(26);
    expect(cupFrom(wide).message).toBe(
      'A socket 46 mm wide would be too deep with so tight a curve. The radius of curvature is set to 26 mm.',
    );
  });

  test('a message stands exactly where the knob was moved', () => {
    fc.assert(
      fc.property(settings, (setting) => {
        const { shape, message } = cupFrom(setting);
        const moved = Math.abs(shape[setting.shapeBy] - setting[setting.shapeBy]) > 2e-3;
        expect(message !== '').toBe(moved);
      }),
    );
  });

  test('nothing a link could hold makes it throw or give a number that is none', () => {
    const wild = fc.oneof(fc.double(), fc.constantFrom(NaN, Infinity, -Infinity, -0, 1e308));
    const any = fc.record({
      ballDiameter: wild,
      width: wild,
      shapeBy: fc.constantFrom(...shapes),
      depth: wild,
      radius: wild,
      mismatch: wild,
    });
    fc.assert(
      fc.property(any, (setting) => {
        const { socket, ballRadius } = cupFrom(setting);
        expect(socket.width).toBeGreaterThanOrEqual(12);
        expect(socket.depth).toBeGreaterThanOrEqual(0);
        expect(radialMismatch(socket, ballRadius)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('the range a control is given', () => {
  test('its ends are taken without a word and lie on its steps; one step beyond is refused', () => {
    fc.assert(
      fc.property(
        settings,
        fc.constantFrom<CupField>('ballDiameter', 'width', ...shapes),
        (raw, field) => {
          const sound = { ...raw, [raw.shapeBy]: cupFrom(raw).shape[raw.shapeBy] };
          const isShape = shapes.includes(field as ShapeBy);
          const setting = isShape ? { ...sound, shapeBy: field as ShapeBy } : sound;
          const range = cupRanges[field];
          const allowed = allowedRange(setting, field);
          expect(allowed.min).toBeGreaterThanOrEqual(range.min);
          expect(allowed.max).toBeLessThanOrEqual(range.max);
          for (const end of [allowed.min, allowed.max]) {
            const steps = (end - range.min) / range.step;
            expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
            expect(cupFrom({ ...setting, [field]: end }).message).toBe('');
          }
          for (const beyond of [allowed.min - range.step, allowed.max + range.step]) {
            if (beyond < range.min || beyond > range.max) continue;
            const asked = { ...setting, [field]: beyond };
            const { shape, message } = cupFrom(asked);
            const miss = Math.abs(shape[setting.shapeBy] - asked[setting.shapeBy]);
            expect(miss).toBeGreaterThan(0);
            expect(message !== '').toBe(miss > 1e-3);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe('another knob', () => {
  test('keeps the shape, unless it cannot say it: then it says so', () => {
    fc.assert(
      fc.property(settings, fc.constantFrom(...shapes), (setting, to) => {
        const before = cupFrom(setting);
        const { setting: next, message } = switchShapeBy(setting, to);
        const after = cupFrom(next);
        expect(next.shapeBy).toBe(to);
        expect(after.message).toBe('');
        if (message === '') {
          expect(Math.abs(after.socket.depth - before.socket.depth)).toBeLessThan(2e-3);
        } else {
          expect(before.shape[to]).toBeGreaterThan(cupRanges[to].max);
          expect(after.shape[to]).toBe(cupRanges[to].max);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('a flat socket has no radius: the control goes to its end and says why', () => {
    const { setting, message } = switchShapeBy({ ...defaultCup, depth: 0 }, 'radius');
    expect(setting.radius).toBe(80);
    expect(message).toBe(
      'The radius of curvature was without end, as the socket is flat; this control reaches 80 mm and stands there.',
    );
  });

  test('there and back again is the same shape', () => {
    const once = switchShapeBy({ ...defaultCup, depth: 3.3 }, 'mismatch').setting;
    const back = switchShapeBy(once, 'depth').setting;
    expect(back.depth).toBeCloseTo(3.3, 9);
  });
});
