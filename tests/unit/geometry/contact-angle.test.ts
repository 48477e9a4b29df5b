import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contactAt,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
} from '../../../sims/geometry/index.ts';
import { anySocket, fraction, pairOf } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });

describe('contactAt', () => {
  test('contactAt: centred', () => {
    expect(contactAt(cup, 20, 0)).toStrictEqual({ place: 'inside', angle: 0 });
  });

  test('contactAt: inside, sin φ = x/m', () => {
    const contact = contactAt(cup, 20, 2);
    expect(contact.place).toBe('inside');
    expectClose(Math.sin(contact.angle), 2 / 5, { relative: 1e-14 });
  });

  test('contactAt: over the rim, sin φ = (w/2 − x)/r', () => {
    const contact = contactAt(cup, 20, 5);
    expect(contact.place).toBe('rim');
    expectClose(Math.sin(contact.angle), 10 / 20, { relative: 1e-14 });
  });

  test('contactAt: on top of the rim the normal is upright', () => {
    expect(contactAt(cup, 20, 15)).toStrictEqual({ place: 'rim', angle: 0 });
  });

  test('contactAt: conforming is on the rim from the start', () => {
    expect(contactAt(cup, 25, 0)).toStrictEqual({ place: 'rim', angle: cup.halfArc });
  });

  test('contactAt: flat is inside and upright everywhere', () => {
    const flat = socketFromDepth({ depth: 0, width: 30 });
    for (const x of [0, 7, 15]) {
      expect(contactAt(flat, 24, x)).toStrictEqual({ place: 'inside', angle: 0 });
    }
  });

  test('contactAt: at first rim contact the tilt is the half arc, to the last digit', () => {
    fc.assert(
      fc.property(pairOf(anySocket), ({ socket, ballRadius }) => {
        const rim = rimContactTranslation(socket, ballRadius);
        expect(contactAt(socket, ballRadius, rim)).toStrictEqual({
          place: 'rim',
          angle: socket.halfArc,
        });
      }),
    );
  });

  test('contactAt: never beyond the half arc, never below upright', () => {
    fc.assert(
      fc.property(pairOf(anySocket), fraction, ({ socket, ballRadius }, part) => {
        const { angle } = contactAt(socket, ballRadius, part * (socket.width / 2));
        return angle >= 0 && angle <= socket.halfArc;
      }),
    );
  });

  test('contactAt: nor at the numbers next to first rim contact', () => {
    fc.assert(
      fc.property(pairOf(anySocket), fc.integer({ min: -4, max: 4 }), (pair, steps) => {
        const { socket, ballRadius } = pair;
        const rim = rimContactTranslation(socket, ballRadius);
        const x = Math.min(socket.width / 2, rim * (1 + steps * Number.EPSILON));
        return contactAt(socket, ballRadius, x).angle <= socket.halfArc;
      }),
    );
  });

  test('contactAt: socket unmodified', () => {
    withFrozen(cup, (socket) => contactAt(socket, 20, 4));
  });
});
