import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { limitsOf, mismatchLimits } from '../../../sims/benches/two-curves/pair-limits.ts';
import {
  allowedRange,
  changeInstead,
  holdInstead,
  pairAt,
  pairFrom,
} from '../../../sims/benches/two-curves/pair.ts';
import {
  defaultPair,
  pairRanges,
  type PairField,
  type PairSetting,
} from '../../../sims/benches/two-curves/pair-ranges.ts';
import { stopReason } from '../../../sims/benches/two-curves/pair-words.ts';
import { nearestAllowed } from '../../../sims/shared/range.ts';
import { expectClose } from '../geometry/close.ts';

const within = (field: PairField): fc.Arbitrary<number> => {
  const { min, max } = pairRanges[field];
  return fc.double({ min, max, noNaN: true });
};
const settings: fc.Arbitrary<PairSetting> = fc.record({
  change: fc.constantFrom('socket' as const, 'ball' as const),
  held: fc.constantFrom('width' as const, 'depth' as const, 'arc' as const),
  ballDiameter: within('ballDiameter'),
  radius: within('radius'),
  mismatch: within('mismatch'),
  width: within('width'),
  depth: within('depth'),
  arc: within('arc'),
});
/** A control turned to its end may lie a thousandth over a limit that is no step of its own. */
const ROUNDING = 1e-3;

describe('pairFrom', () => {
  test('takes a setting that can be had as it is', () => {
    const { socket, ballRadius, mismatch, message } = pairFrom(defaultPair);
    expect({ ballRadius, mismatch, message }).toEqual({ ballRadius: 24, mismatch: 3, message: '' });
    expectClose(socket.curvatureRadius, 27, { relative: 1e-12 });
    expectClose(socket.width, 28, { relative: 1e-12 });
  });

  test.each([
    ['width', 28],
    ['depth', 4],
    ['arc', 62],
  ] as const)('%s: the socket has what is held', (held, value) => {
    const { socket, shape } = pairFrom({ ...defaultPair, held });
    const has = { width: socket.width, depth: socket.depth, arc: (360 * socket.halfArc) / Math.PI };
    expectClose(has[held], value, { relative: 1e-12 });
    expect(shape[held]).toBe(value);
  });

  test('whatever is asked: the ball fits, the sizes are allowed, and a change is told', () => {
    fc.assert(
      fc.property(settings, (asked) => {
        const { setting, socket, ballRadius, mismatch, message, shape } = pairFrom(asked);
        expect(ballRadius).toBeLessThanOrEqual(socket.curvatureRadius);
        expect(ballRadius).toBeGreaterThanOrEqual(pairRanges.ballDiameter.min / 2 - ROUNDING);
        expect(ballRadius).toBeLessThanOrEqual(pairRanges.ballDiameter.max / 2 + ROUNDING);
        expectClose(socket.curvatureRadius - ballRadius, mismatch, { absolute: 1e-9 });
        expect(shape.arc).toBeLessThanOrEqual(pairRanges.arc.max + ROUNDING);
        const staying = asked.change === 'socket' ? 'ballDiameter' : 'radius';
        const isChanged = ([staying, 'mismatch', asked.held] as const).some(
          (field) => Math.abs(setting[field] - asked[field]) > ROUNDING,
        );
        expect(message !== '').toBe(isChanged);
      }),
    );
  });

  test.each([
    [
      { width: 50 },
      'Beyond, it would take more than 120° of the curve of a 48.0 mm ball. The width is set to 41.5 mm.',
    ],
    [
      { change: 'ball', radius: 18, mismatch: 8 },
      'Beyond, the ball would be smaller than 30 mm. The radial mismatch is set to 3.0 mm.',
    ],
    [
      { change: 'ball', radius: 44, mismatch: 2 },
      'Beyond, the ball would be larger than 70 mm. The radial mismatch is set to 9.0 mm.',
    ],
    [
      { mismatch: -1 },
      'This control goes from 0 to 10.0 mm. The radial mismatch is set to 0.0 mm.',
    ],
    [{ width: NaN }, 'This control goes from 10 to 60.0 mm. The width is set to 28.0 mm.'],
  ] as const)('%j is answered with a sentence and the nearest value', (change, message) => {
    expect(pairFrom({ ...defaultPair, ...change }).message.replaceAll('\u00a0', ' ')).toBe(message);
  });

  test('a value at an end of the allowed range is taken; one step beyond is not', () => {
    fc.assert(
      fc.property(settings, fc.constantFrom(...fieldNames()), (asked, field) => {
        const { setting } = pairFrom(asked);
        const counts = [
          setting.change === 'socket' ? 'ballDiameter' : 'radius',
          'mismatch',
          setting.held,
        ];
        if (!counts.includes(field)) return;
        const range = allowedRange(setting, field);
        for (const end of [range.min, range.max]) {
          expect(pairFrom({ ...setting, [field]: end }).message).toBe('');
        }
        // A limit may lie within rounding of a step: that much more than a step is surely beyond it.
        const beyond = range.step + 2e-3;
        const { min, max } = pairRanges[field];
        if (range.max + beyond <= max) {
          expect(pairFrom({ ...setting, [field]: range.max + beyond }).message).not.toBe('');
        }
        if (range.min - beyond >= min) {
          expect(pairFrom({ ...setting, [field]: range.min - beyond }).message).not.toBe('');
        }
      }),
    );
  });
});

describe('another knob', () => {
  test('holding something else keeps the socket, or says why it cannot', () => {
    fc.assert(
      fc.property(settings, fc.constantFrom('width', 'depth', 'arc'), (asked, held) => {
        const before = pairFrom(asked);
        const { setting, message } = holdInstead(asked, held);
        const after = pairFrom(setting);
        expect(after.message).toBe('');
        // By the measure that is held from now on: over a shallow cup a little depth is much width.
        const isKept = Math.abs(after.shape[held] - before.shape[held]) <= ROUNDING;
        expect(isKept).toBe(message === '');
      }),
    );
  });

  test('changing the other curve keeps the pair where the socket has room for every ball', () => {
    const before = pairFrom(defaultPair);
    const after = pairFrom(changeInstead(defaultPair, 'ball'));
    expect(after.socket).toEqual(before.socket);
    expect([after.ballRadius, after.mismatch]).toEqual([before.ballRadius, before.mismatch]);
    expect(pairFrom(changeInstead(after.setting, 'socket')).socket).toEqual(before.socket);
  });
});

test('every mismatch a setting allows makes a pair', () => {
  fc.assert(
    fc.property(settings, fc.double({ min: 0, max: 1, noNaN: true }), (asked, share) => {
      const { setting } = pairFrom(asked);
      const { min, max } = mismatchLimits(setting);
      const { socket, ballRadius } = pairAt(setting, min + (max - min) * share);
      expect(socket.curvatureRadius).toBeGreaterThanOrEqual(ballRadius);
      expect((360 * socket.halfArc) / Math.PI).toBeLessThanOrEqual(pairRanges.arc.max + ROUNDING);
    }),
  );
});

describe('why a control stops', () => {
  test('at an end of its own it says nothing', () => {
    const setting = { ...defaultPair, mismatch: 10 };
    expect(stopReason(setting, 'mismatch', allowedRange(setting, 'mismatch'))).toBeUndefined();
  });

  test('held by the others, it says what holds it', () => {
    const width = allowedRange(defaultPair, 'width').max;
    const setting = { ...defaultPair, width };
    expect(stopReason(setting, 'width', allowedRange(setting, 'width'))).toContain(
      'more than 120°',
    );
    const least = limitsOf(setting, 'ballDiameter').min;
    const small = {
      ...setting,
      ballDiameter: nearestAllowed(least, allowedRange(setting, 'ballDiameter')),
    };
    expect(stopReason(small, 'ballDiameter', allowedRange(small, 'ballDiameter'))).toContain(
      'a socket of this width',
    );
  });
});

function fieldNames(): readonly PairField[] {
  return Object.keys(pairRanges) as PairField[];
}
