import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isFlat, socketFromDepth, sphericalSocket } from '../../../sims/geometry/index.ts';
import { anySocket, deepSocket, ordinarySocket, shallowSocket } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';

describe('sphericalSocket', () => {
  test('sphericalSocket: a 3-4-5 socket', () => {
    const socket = sphericalSocket({ curvatureRadius: 25, width: 30 });
    expect(socket.curvatureRadius).toBe(25);
    expect(socket.width).toBe(30);
    expectClose(socket.depth, 5, { relative: 1e-14 });
    expectClose(Math.tan(socket.halfArc), 3 / 4, { relative: 1e-14 });
  });

  test('sphericalSocket: hemisphere', () => {
    const socket = sphericalSocket({ curvatureRadius: 24, width: 48 });
    expect(socket.halfArc).toBe(Math.PI / 2);
    expectClose(socket.depth, 24, { relative: 1e-14 });
  });

  test('sphericalSocket: a width that rounding carried past the diameter is the hemisphere', () => {
    const socket = sphericalSocket({ curvatureRadius: 0.3, width: 0.1 * 6 + 1e-16 });
    expect(socket.halfArc).toBe(Math.PI / 2);
  });

  test('sphericalSocket: very shallow keeps the digits of its depth', () => {
    // w²/8R is the depth but for a share of (w/4R)², here 1e-16.
    const socket = sphericalSocket({ curvatureRadius: 1e9, width: 40 });
    expectClose(socket.depth, 40 ** 2 / 8e9, { relative: 1e-14 });
  });

  test('sphericalSocket: the rim lies on the sphere', () => {
    fc.assert(
      fc.property(anySocket, ({ curvatureRadius, width, depth }) => {
        // (R − d)² + (w/2)² = R², divided by R² and with the large terms taken out.
        const share = depth / curvatureRadius;
        expectClose(2 * share - share ** 2, (width / 2 / curvatureRadius) ** 2, {
          relative: 1e-13,
        });
      }),
    );
  });

  test('sphericalSocket: input unmodified', () => {
    withFrozen({ curvatureRadius: 27, width: 30 }, sphericalSocket);
  });
});

describe('socketFromDepth', () => {
  test('socketFromDepth: a 3-4-5 socket', () => {
    const socket = socketFromDepth({ depth: 5, width: 30 });
    expectClose(socket.curvatureRadius, 25, { relative: 1e-14 });
    expectClose(Math.tan(socket.halfArc), 3 / 4, { relative: 1e-14 });
    expect(socket.depth).toBe(5);
  });

  test('socketFromDepth: flat', () => {
    expect(socketFromDepth({ depth: 0, width: 30 })).toStrictEqual({
      curvatureRadius: Infinity,
      width: 30,
      halfArc: 0,
      depth: 0,
    });
  });

  test('socketFromDepth: hemisphere', () => {
    const socket = socketFromDepth({ depth: 24, width: 48 });
    expect(socket.curvatureRadius).toBe(24);
    expect(socket.halfArc).toBe(Math.PI / 2);
  });

  test('socketFromDepth: a depth too small for its radius to be a number is flat', () => {
    const socket = socketFromDepth({ depth: Number.MIN_VALUE, width: 30 });
    expect(isFlat(socket)).toBe(true);
    expect(socket.depth).toBe(0);
  });

  test('socketFromDepth: input unmodified', () => {
    withFrozen({ depth: 5, width: 30 }, socketFromDepth);
  });
});

describe('round trip', () => {
  test('sphericalSocket → socketFromDepth: ordinary and shallow', () => {
    fc.assert(
      fc.property(fc.oneof(ordinarySocket, shallowSocket), (socket) => {
        const there = sphericalSocket(socket);
        const back = socketFromDepth(there);
        expectClose(back.curvatureRadius, socket.curvatureRadius, { relative: 1e-12 });
        expectClose(back.halfArc, there.halfArc, { relative: 1e-12 });
        expect(back.width).toBe(socket.width);
      }),
    );
  });

  test('sphericalSocket → socketFromDepth: deep', () => {
    fc.assert(
      fc.property(deepSocket, (socket) => {
        const there = sphericalSocket(socket);
        // Rounding may set the depth a hair above half the width, which is not a depth.
        const back = socketFromDepth({ ...there, depth: Math.min(there.depth, there.width / 2) });
        expectClose(back.curvatureRadius, socket.curvatureRadius, { relative: 1e-12 });
        // The arc sine keeps half its digits near a right angle: √ε is 1.5e-8.
        expectClose(back.halfArc, there.halfArc, { absolute: 5e-8 });
      }),
    );
  });

  test('socketFromDepth → sphericalSocket: any', () => {
    fc.assert(
      fc.property(anySocket, (socket) => {
        const depth = Math.min(socket.depth, socket.width / 2);
        const there = socketFromDepth({ depth, width: socket.width });
        const back = sphericalSocket(there);
        expectClose(back.depth, depth, { relative: 1e-7 });
        expectClose(back.halfArc, there.halfArc, { absolute: 5e-8 });
      }),
    );
  });
});

describe('isFlat', () => {
  test('isFlat: depth 0 and nothing else', () => {
    expect(isFlat(socketFromDepth({ depth: 0, width: 30 }))).toBe(true);
    fc.assert(fc.property(anySocket, (socket) => !isFlat(socket)));
  });
});
