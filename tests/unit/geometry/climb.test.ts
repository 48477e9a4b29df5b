import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  climbAt,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';
import {
  anySocket,
  fraction,
  mismatchedPairOf,
  ordinarySocket,
  pairOf,
  shallowSocket,
  real,
} from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';
import { rolledHeight, slopeAt } from './oracles.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });

describe('climbAt', () => {
  test('climbAt: 3-4-5 inside the cup', () => {
    // m = 5, x = 3: 5 − 4.
    const wide = sphericalSocket({ curvatureRadius: 25, width: 40 });
    expectClose(climbAt(wide, 20, 3), 1, { relative: 1e-14 });
  });

  test('climbAt: 3-4-5 over the rim', () => {
    // w/2 − x = 12, r = 20: 5 + 16 − 20.
    expectClose(climbAt(cup, 20, 3), 1, { relative: 1e-14 });
  });

  test('climbAt: nothing in the middle', () => {
    fc.assert(
      fc.property(pairOf(anySocket), ({ socket, ballRadius }) => {
        expect(climbAt(socket, ballRadius, 0)).toBe(0);
      }),
    );
  });

  test('climbAt: at width/2 the depth, whatever the mismatch', () => {
    fc.assert(
      fc.property(pairOf(anySocket), ({ socket, ballRadius }) => {
        expectClose(climbAt(socket, ballRadius, socket.width / 2), socket.depth, {
          relative: 1e-14,
        });
      }),
    );
  });

  test('climbAt: flat never climbs', () => {
    const flat = socketFromDepth({ depth: 0, width: 30 });
    for (const x of [0, 7, 15]) expect(climbAt(flat, 24, x)).toBe(0);
  });

  test('climbAt: from 0 to the depth, never falling on the way out', () => {
    fc.assert(
      fc.property(
        pairOf(anySocket),
        fc.tuple(fraction, fraction),
        ({ socket, ballRadius }, parts) => {
          const [near, far] = parts.map((part) => part * (socket.width / 2)).sort((a, b) => a - b);
          const low = climbAt(socket, ballRadius, near ?? NaN);
          const high = climbAt(socket, ballRadius, far ?? NaN);
          const rounding = 1e-14 * socket.width;
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeGreaterThanOrEqual(low - rounding);
          expect(high).toBeLessThanOrEqual(socket.depth + rounding);
        },
      ),
    );
  });

  test('climbAt: unbroken at first rim contact', () => {
    fc.assert(
      fc.property(mismatchedPairOf(anySocket), ({ socket, ballRadius }) => {
        const rim = rimContactTranslation(socket, ballRadius);
        const before = climbAt(socket, ballRadius, rim * (1 - 1e-12));
        // Near a right angle the slope is so steep that 1e-12 of the way is a climb of √1e-12 of the mismatch.
        const mismatch = radialMismatch(socket, ballRadius);
        const steepest = Math.min(mismatch, socket.curvatureRadius, socket.width) * 3e-6;
        expectClose(before, climbAt(socket, ballRadius, rim), { absolute: steepest });
      }),
    );
  });

  test.each([
    { curvatureRadius: 27, width: 28, ballRadius: 24 },
    { curvatureRadius: 27, width: 28, ballRadius: 26.9 },
    { curvatureRadius: 33.4, width: 31.7, ballRadius: 24 },
    { curvatureRadius: 20, width: 39, ballRadius: 12 },
    { curvatureRadius: 500, width: 30, ballRadius: 24 },
  ])('climbAt: a ball rolled over the profile, $curvatureRadius/$width/$ballRadius', (pair) => {
    const socket = sphericalSocket(pair);
    const bottom = rolledHeight(socket, pair.ballRadius, 0);
    for (const part of [0.02, 0.1, 0.3, 0.7, 0.95]) {
      const x = part * (pair.width / 2);
      const rolled = rolledHeight(socket, pair.ballRadius, x) - bottom;
      // Points of the profile stand 1 µm apart: the highest lies within a billionth of a millimetre of the contact's.
      expectClose(climbAt(socket, pair.ballRadius, x), rolled, { absolute: 1e-7 });
    }
  });

  test('climbAt: its slope is the stability ratio', () => {
    const pairs = mismatchedPairOf(fc.oneof(ordinarySocket, shallowSocket));
    fc.assert(
      fc.property(pairs, real(0.02, 0.98), (pair, part) => {
        const { socket, ballRadius } = pair;
        const rim = rimContactTranslation(socket, ballRadius);
        const end = socket.width / 2;
        const step = 1e-4 * Math.min(rim, end - rim);
        const climb = (x: number): number => climbAt(socket, ballRadius, x);
        for (const x of [part * rim, rim + part * (end - rim)]) {
          const ratio = stabilityRatioAt(socket, ballRadius, x);
          expectClose(slopeAt(climb, x, step), ratio, { relative: 1e-6, absolute: 1e-9 });
        }
      }),
    );
  });

  test('climbAt: the conforming limit is met continuously', () => {
    fc.assert(
      fc.property(ordinarySocket, fraction, real(-12, -1), (socket, part, power) => {
        const x = part * (socket.width / 2);
        const mismatch = socket.curvatureRadius * 10 ** power;
        const nearly = climbAt(socket, socket.curvatureRadius - mismatch, x);
        const conforming = climbAt(socket, socket.curvatureRadius, x);
        // At most m inside the cup, (1/cos β − 1)m over the rim, and m sin β tan β where so small a mismatch counts
        // as none: under 3 m up to 70°. Then the rounding.
        expectClose(nearly, conforming, { absolute: 3 * mismatch + 1e-13 * socket.width });
      }),
    );
  });

  test('climbAt: grows with the scale', () => {
    fc.assert(
      fc.property(
        pairOf(ordinarySocket),
        fraction,
        real(0.01, 100),
        ({ socket, ballRadius }, part, scale) => {
          const scaled = sphericalSocket({
            curvatureRadius: scale * socket.curvatureRadius,
            width: scale * socket.width,
          });
          const scaledBall = Math.min(scale * ballRadius, scaled.curvatureRadius);
          expectClose(
            climbAt(scaled, scaledBall, part * (scaled.width / 2)),
            scale * climbAt(socket, ballRadius, part * (socket.width / 2)),
            { absolute: 1e-12 * scaled.width },
          );
        },
      ),
    );
  });

  test('climbAt: socket unmodified', () => {
    withFrozen(cup, (socket) => climbAt(socket, 20, 4));
  });
});
