import { climbAt } from './climb.ts';
import { rimContactTranslation } from './mismatch.ts';
import { inRange } from './numeric.ts';
import type { SphericalSocket } from './spherical-socket.ts';
import { stabilityRatioAt } from './stability-ratio.ts';

/** One row of the ball's path. */
export interface BallPathRow {
  /** Sideways translation of the ball's centre from the centre line, mm. */
  readonly translation: number;
  /** Climb of the ball's centre, mm. */
  readonly climb: number;
  /** Frictionless stability ratio there: the slope of the path. */
  readonly stabilityRatio: number;
}

/**
 * The path of the ball's centre from the middle of the socket to dislocation, without friction.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @param count number of rows, a whole number from 3 up
 * @returns `count` rows by rising translation; 0, the rim-contact translation and width/2 are always among them
 * @throws RangeError for a count that is not a whole number ≥ 3, or a ball as in {@link climbAt}
 */
export function ballPath(
  socket: SphericalSocket,
  ballRadius: number,
  count: number,
): readonly BallPathRow[] {
  inRange('count', count, 3, Infinity, 'rows');
  if (!Number.isInteger(count)) {
    throw new RangeError(`count is ${count}; allowed: whole numbers from 3 up`);
  }
  const rim = rimContactTranslation(socket, ballRadius);
  return translationsThrough(rim, socket.width / 2, count).map((translation) => ({
    translation,
    climb: climbAt(socket, ballRadius, translation),
    stabilityRatio: stabilityRatioAt(socket, ballRadius, translation),
  }));
}

/** `count` rising translations from 0 to `end`, evenly spaced on either side of `middle`, which is one of them. */
function translationsThrough(middle: number, end: number, count: number): readonly number[] {
  const intervals = count - 1;
  const hasTwoPieces = middle > 0 && middle < end;
  const before = hasTwoPieces
    ? Math.min(intervals - 1, Math.max(1, Math.round((intervals * middle) / end)))
    : 0;
  const after = intervals - before;
  const start = hasTwoPieces ? middle : 0;
  return Array.from({ length: count }, (_, i) => {
    if (i < before) return (middle * i) / before;
    return i === intervals ? end : start + ((end - start) * (i - before)) / after;
  });
}
