import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  ballPath,
  climbAt,
  peakStabilityRatio,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
  stabilityRatioAt,
} from '../../../sims/geometry/index.ts';
import { anySocket, pairOf } from './arbitraries.ts';
import { expectClose } from './close.ts';
import { withFrozen } from './frozen.ts';

const cup = sphericalSocket({ curvatureRadius: 25, width: 30 });
const counts = fc.oneof(fc.constantFrom(3, 4, 5), fc.integer({ min: 3, max: 300 }));

describe('ballPath', () => {
  test('ballPath: five rows of a 3-4-5 socket', () => {
    const rows = ballPath(cup, 20, 5);
    expect(rows.map((row) => row.translation)).toStrictEqual([0, 3, 7, 11, 15]);
    expectClose(rows[1]?.climb ?? NaN, 1, { relative: 1e-14 });
    expectClose(rows[1]?.stabilityRatio ?? NaN, 0.75, { relative: 1e-14 });
    expectClose(rows[4]?.climb ?? NaN, 5, { relative: 1e-14 });
    expect(rows[4]?.stabilityRatio).toBe(0);
  });

  test('ballPath: as many rows as asked for, rising', () => {
    fc.assert(
      fc.property(pairOf(anySocket), counts, ({ socket, ballRadius }, count) => {
        const rows = ballPath(socket, ballRadius, count);
        expect(rows).toHaveLength(count);
        for (const [i, row] of rows.entries()) {
          const previous = rows[i - 1];
          if (previous) expect(row.translation).toBeGreaterThan(previous.translation);
        }
      }),
    );
  });

  test('ballPath: has 0, first rim contact and width/2 to the last digit', () => {
    fc.assert(
      fc.property(pairOf(anySocket), counts, ({ socket, ballRadius }, count) => {
        const translations = ballPath(socket, ballRadius, count).map((row) => row.translation);
        expect(translations[0]).toBe(0);
        expect(translations).toContain(rimContactTranslation(socket, ballRadius));
        expect(translations.at(-1)).toBe(socket.width / 2);
      }),
    );
  });

  test('ballPath: each row is what the single functions give', () => {
    fc.assert(
      fc.property(pairOf(anySocket), counts, ({ socket, ballRadius }, count) => {
        for (const row of ballPath(socket, ballRadius, count)) {
          expect(row.climb).toBe(climbAt(socket, ballRadius, row.translation));
          expect(row.stabilityRatio).toBe(stabilityRatioAt(socket, ballRadius, row.translation));
        }
      }),
    );
  });

  test('ballPath: its steepest row has the peak ratio', () => {
    fc.assert(
      fc.property(pairOf(anySocket), counts, ({ socket, ballRadius }, count) => {
        const ratios = ballPath(socket, ballRadius, count).map((row) => row.stabilityRatio);
        expect(Math.max(...ratios)).toBe(peakStabilityRatio(socket));
      }),
    );
  });

  test('ballPath: flat is level and holds nothing', () => {
    const rows = ballPath(socketFromDepth({ depth: 0, width: 30 }), 24, 4);
    expect(rows).toStrictEqual(
      [0, 5, 10, 15].map((translation) => ({ translation, climb: 0, stabilityRatio: 0 })),
    );
  });

  test('ballPath: spacing is even on either side of first rim contact, and alike', () => {
    const rows = ballPath(cup, 20, 101).map((row) => row.translation);
    const gaps = rows.slice(1).map((x, i) => x - (rows[i] ?? NaN));
    expectClose(Math.max(...gaps), Math.min(...gaps), { relative: 0.1 });
  });

  test('ballPath: socket unmodified', () => {
    withFrozen(cup, (socket) => ballPath(socket, 20, 7));
  });
});
