import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contactAt,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
} from '../../../sims/geometry/index.ts';
import { anySocket, mismatchedPairOf, ordinarySocket, pairOf } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });
const flat = socketFromDepth({ depth: 0, width: 30 });

describe('radialMismatch', () => {
  test('radialMismatch: radius less radius', () => {
    expect(radialMismatch(cup, 22)).toBe(3);
  });

  test('radialMismatch: conforming', () => {
    expect(radialMismatch(cup, 25)).toBe(0);
  });

  test('radialMismatch: a ball of the radius rebuilt from the depth conforms', () => {
    fc.assert(
      fc.property(ordinarySocket, (socket) => {
        const rebuilt = socketFromDepth(socket);
        expect(radialMismatch(rebuilt, socket.curvatureRadius)).toBe(0);
        expect(radialMismatch(socket, rebuilt.curvatureRadius)).toBe(0);
      }),
    );
  });

  test('radialMismatch: the smallest that counts is a billionth of the radius', () => {
    expect(radialMismatch(cup, 25 * (1 - 5e-10))).toBe(0);
    expectClose(radialMismatch(cup, 25 * (1 - 2e-9)), 5e-8, { relative: 1e-6 });
  });

  test('radialMismatch: flat is infinite', () => {
    expect(radialMismatch(flat, 24)).toBe(Infinity);
  });

  test('radialMismatch: never negative', () => {
    fc.assert(
      fc.property(
        pairOf(anySocket),
        ({ socket, ballRadius }) => radialMismatch(socket, ballRadius) >= 0,
      ),
    );
  });

  test('radialMismatch: socket unmodified', () => {
    withFrozen(cup, (socket) => radialMismatch(socket, 22));
  });
});

describe('rimContactTranslation', () => {
  test('rimContactTranslation: 3 mm of mismatch in a 3-4-5 socket', () => {
    expectClose(rimContactTranslation(cup, 22), (3 * 3) / 5, { relative: 1e-14 });
  });

  test('rimContactTranslation: conforming touches the rim at once', () => {
    expect(rimContactTranslation(cup, 25)).toBe(0);
  });

  test('rimContactTranslation: flat has its limit, half the width', () => {
    expect(rimContactTranslation(flat, 24)).toBe(15);
    // A socket of next to no depth comes to the same.
    const nearlyFlat = socketFromDepth({ depth: 1e-9, width: 30 });
    expectClose(rimContactTranslation(nearlyFlat, 24), 15, { relative: 1e-6 });
  });

  test('rimContactTranslation: the ball then touches the sphere at the rim', () => {
    fc.assert(
      fc.property(mismatchedPairOf(ordinarySocket), ({ socket, ballRadius }) => {
        // The rim seen from the ball's centre is one ball radius away, in the direction of the hollow's own normal.
        const x = rimContactTranslation(socket, ballRadius);
        const across = socket.width / 2 - x;
        expectClose(across, ballRadius * Math.sin(socket.halfArc), { relative: 1e-12 });
        expect(contactAt(socket, ballRadius, x).place).toBe('rim');
      }),
    );
  });

  test('rimContactTranslation: never past the rim, for any ball down to a point', () => {
    fc.assert(
      fc.property(anySocket, fc.integer({ min: 0, max: 40 }), (socket, power) => {
        const x = rimContactTranslation(socket, socket.curvatureRadius * 10 ** -power);
        return x >= 0 && x <= socket.width / 2;
      }),
    );
  });

  test('rimContactTranslation: socket unmodified', () => {
    withFrozen(cup, (socket) => rimContactTranslation(socket, 22));
  });
});
