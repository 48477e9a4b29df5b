import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  balanceStabilityAngle,
  contactAt,
  frictionAngle,
  peakStabilityRatio,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';
import {
  anySocket,
  deepSocket,
  fraction,
  friction,
  mismatchedPairOf,
  ordinarySocket,
  pairOf,
  shallowSocket,
  real,
} from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';
import { areaWithKink } from './oracles.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });
const flat = socketFromDepth({ depth: 0, width: 30 });
const hemisphere = sphericalSocket({ curvatureRadius: 25, width: 50 });

describe('frictionAngle', () => {
  test('frictionAngle: μ = tan λ', () => {
    expect(frictionAngle(0)).toBe(0);
    expectClose(frictionAngle(1), Math.PI / 4, { relative: 1e-15 });
    fc.assert(
      fc.property(friction, (mu) => {
        expectClose(Math.tan(frictionAngle(mu)), mu, { relative: 1e-13 });
      }),
    );
  });
});

describe('stabilityRatioAt', () => {
  test('stabilityRatioAt: 3-4-5 inside the cup and over the rim', () => {
    const wide = sphericalSocket({ curvatureRadius: 25, width: 40 });
    expectClose(stabilityRatioAt(wide, 20, 3), 3 / 4, { relative: 1e-14 });
    expectClose(stabilityRatioAt(cup, 20, 3), 12 / 16, { relative: 1e-14 });
  });

  test('stabilityRatioAt: nothing holds a centred ball that has room, nor one on top of the rim', () => {
    expect(stabilityRatioAt(cup, 20, 0)).toBe(0);
    expect(stabilityRatioAt(cup, 20, 15)).toBe(0);
  });

  test('stabilityRatioAt: flat holds by friction alone', () => {
    for (const x of [0, 7, 15]) {
      expect(stabilityRatioAt(flat, 24, x)).toBe(0);
      expectClose(stabilityRatioAt(flat, 24, x, 0.1), 0.1, { relative: 1e-14 });
    }
  });

  test('stabilityRatioAt: friction adds its angle to the tilt', () => {
    fc.assert(
      fc.property(pairOf(anySocket), fraction, friction, ({ socket, ballRadius }, part, mu) => {
        const x = part * (socket.width / 2);
        const ratio = stabilityRatioAt(socket, ballRadius, x, mu);
        const tangent = Math.tan(contactAt(socket, ballRadius, x).angle);
        // tan(φ + λ) by the addition theorem; where its denominator reaches 0 no side force is enough.
        const denominator = 1 - tangent * mu;
        if (denominator > 1e-6 && tangent < 1e6) {
          expectClose(ratio, (tangent + mu) / denominator, { relative: 1e-9 });
        } else {
          expect(ratio).toBeGreaterThan(1e5);
        }
      }),
    );
  });

  test('stabilityRatioAt: Infinity, never negative, once φ + λ reaches a right angle', () => {
    expect(stabilityRatioAt(cup, 20, 3, 4 / 3)).toBe(Infinity);
    expect(stabilityRatioAt(cup, 20, 3, 1.4)).toBe(Infinity);
    expect(stabilityRatioAt(cup, 20, 3, 1e300)).toBe(Infinity);
    expect(stabilityRatioAt(hemisphere, 20, 5)).toBe(Infinity);
    fc.assert(
      fc.property(
        pairOf(anySocket),
        fraction,
        friction,
        ({ socket, ballRadius }, part, mu) =>
          stabilityRatioAt(socket, ballRadius, part * (socket.width / 2), mu) >= 0,
      ),
    );
  });

  test('stabilityRatioAt: more friction never holds less', () => {
    fc.assert(
      fc.property(
        pairOf(anySocket),
        fraction,
        fc.tuple(friction, friction),
        ({ socket, ballRadius }, part, [one, other]) => {
          const x = part * (socket.width / 2);
          const less = stabilityRatioAt(socket, ballRadius, x, Math.min(one, other));
          const more = stabilityRatioAt(socket, ballRadius, x, Math.max(one, other));
          return more >= less;
        },
      ),
    );
  });

  test('stabilityRatioAt: rises before first rim contact', () => {
    fc.assert(
      fc.property(
        mismatchedPairOf(anySocket),
        fc.tuple(fraction, fraction),
        ({ socket, ballRadius }, parts) => {
          const rim = rimContactTranslation(socket, ballRadius);
          const [near = 0, far = 0] = parts.map((part) => part * rim).sort((a, b) => a - b);
          fc.pre(far - near > 1e-9 * rim);
          expect(stabilityRatioAt(socket, ballRadius, far)).toBeGreaterThan(
            stabilityRatioAt(socket, ballRadius, near),
          );
        },
      ),
    );
  });

  test('stabilityRatioAt: falls after first rim contact', () => {
    fc.assert(
      fc.property(
        pairOf(anySocket),
        fc.tuple(fraction, fraction),
        ({ socket, ballRadius }, parts) => {
          const rim = rimContactTranslation(socket, ballRadius);
          const end = socket.width / 2;
          const [near = 0, far = 0] = parts
            .map((part) => (part === 1 ? end : rim + part * (end - rim)))
            .sort((a, b) => a - b);
          fc.pre(far - near > 1e-9 * end);
          expect(stabilityRatioAt(socket, ballRadius, far)).toBeLessThan(
            stabilityRatioAt(socket, ballRadius, near),
          );
        },
      ),
    );
  });

  test.each([
    ['ordinary', ordinarySocket],
    ['shallow', shallowSocket],
    ['deep, up to the hemisphere', deepSocket],
  ])('stabilityRatioAt: the area under the curve is the depth, %s', (_, sockets) => {
    fc.assert(
      fc.property(pairOf(sockets), ({ socket, ballRadius }) => {
        const rim = rimContactTranslation(socket, ballRadius);
        const area = areaWithKink(
          (x) => stabilityRatioAt(socket, ballRadius, x),
          rim,
          socket.width / 2,
        );
        expectClose(area, socket.depth, { relative: 1e-6 });
      }),
    );
  });

  test('stabilityRatioAt: the conforming limit is met continuously off the middle', () => {
    fc.assert(
      fc.property(ordinarySocket, real(0.01, 1), real(-12, -3), (socket, part, power) => {
        const x = part * (socket.width / 2);
        const mismatch = socket.curvatureRadius * 10 ** power;
        const ballRadius = socket.curvatureRadius - mismatch;
        fc.pre(rimContactTranslation(socket, ballRadius) < x);
        // sin φ changes by at most sin β · m/R, and d tan φ / d sin φ = 1/cos³φ, under 26 up to 70°.
        expectClose(
          stabilityRatioAt(socket, ballRadius, x),
          stabilityRatioAt(socket, socket.curvatureRadius, x),
          { absolute: 30 * 10 ** power + 1e-12 },
        );
      }),
    );
  });

  test('stabilityRatioAt: in the middle a conforming pair holds most, any room at all holds nothing', () => {
    fc.assert(
      fc.property(mismatchedPairOf(ordinarySocket), ({ socket, ballRadius }) => {
        expect(stabilityRatioAt(socket, ballRadius, 0)).toBe(0);
        expect(stabilityRatioAt(socket, socket.curvatureRadius, 0)).toBe(
          peakStabilityRatio(socket),
        );
      }),
    );
  });

  test('stabilityRatioAt: the same at every scale', () => {
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
          // A mismatch of 1e-7 R is itself known to 1e-9 only: two radii of sixteen digits, subtracted.
          fc.pre(
            radialMismatch(socket, ballRadius) === 0 || ballRadius < 0.99 * socket.curvatureRadius,
          );
          expectClose(
            stabilityRatioAt(scaled, scaledBall, part * (scaled.width / 2)),
            stabilityRatioAt(socket, ballRadius, part * (socket.width / 2)),
            { relative: 1e-9, absolute: 1e-12 },
          );
        },
      ),
    );
  });

  test('stabilityRatioAt: to the last digit the same when all is doubled', () => {
    fc.assert(
      fc.property(pairOf(anySocket), fraction, ({ socket, ballRadius }, part) => {
        const doubled = sphericalSocket({
          curvatureRadius: 2 * socket.curvatureRadius,
          width: 2 * socket.width,
        });
        const single = sphericalSocket(socket);
        expect(stabilityRatioAt(doubled, 2 * ballRadius, part * single.width)).toBe(
          stabilityRatioAt(single, ballRadius, part * (single.width / 2)),
        );
      }),
    );
  });

  test('stabilityRatioAt: socket unmodified', () => {
    withFrozen(cup, (socket) => stabilityRatioAt(socket, 20, 4, 0.1));
  });
});

describe('peakStabilityRatio', () => {
  test('peakStabilityRatio: 3-4-5, flat, hemisphere', () => {
    expectClose(peakStabilityRatio(cup), 3 / 4, { relative: 1e-14 });
    expect(peakStabilityRatio(flat)).toBe(0);
    expectClose(peakStabilityRatio(flat, 0.2), 0.2, { relative: 1e-14 });
    expect(peakStabilityRatio(hemisphere)).toBe(Infinity);
  });

  test('peakStabilityRatio: is the ratio at first rim contact, whatever the ball', () => {
    fc.assert(
      fc.property(pairOf(anySocket), friction, ({ socket, ballRadius }, mu) => {
        const rim = rimContactTranslation(socket, ballRadius);
        expect(stabilityRatioAt(socket, ballRadius, rim, mu)).toBe(peakStabilityRatio(socket, mu));
      }),
    );
  });

  test('peakStabilityRatio: nowhere surpassed', () => {
    fc.assert(
      fc.property(pairOf(anySocket), fraction, friction, ({ socket, ballRadius }, part, mu) => {
        const x = part * (socket.width / 2);
        return stabilityRatioAt(socket, ballRadius, x, mu) <= peakStabilityRatio(socket, mu);
      }),
    );
  });

  test('peakStabilityRatio: at a fixed width and ball, a larger radius of curvature costs stability', () => {
    fc.assert(
      fc.property(real(20, 40), real(1.001, 3), (width, factor) => {
        const tight = sphericalSocket({ width, curvatureRadius: 24 });
        const open = sphericalSocket({ width, curvatureRadius: 24 * factor });
        expect(open.depth).toBeLessThan(tight.depth);
        expect(peakStabilityRatio(open)).toBeLessThan(peakStabilityRatio(tight));
      }),
    );
  });

  test('peakStabilityRatio: socket unmodified', () => {
    withFrozen(cup, (socket) => peakStabilityRatio(socket, 0.1));
  });
});

describe('balanceStabilityAngle', () => {
  test('balanceStabilityAngle: the arc tangent of the peak', () => {
    fc.assert(
      fc.property(anySocket, friction, (socket, mu) => {
        // The peak counts as infinite from a billionth of a radian below the right angle.
        expectClose(balanceStabilityAngle(socket, mu), Math.atan(peakStabilityRatio(socket, mu)), {
          absolute: 1.1e-9,
        });
      }),
    );
  });

  test('balanceStabilityAngle: the half arc without friction, a right angle at most', () => {
    expect(balanceStabilityAngle(cup)).toBe(cup.halfArc);
    expect(balanceStabilityAngle(cup, 100)).toBe(Math.PI / 2);
    expect(balanceStabilityAngle(hemisphere, 0.1)).toBe(Math.PI / 2);
  });

  test('balanceStabilityAngle: socket unmodified', () => {
    withFrozen(cup, (socket) => balanceStabilityAngle(socket, 0.1));
  });
});
