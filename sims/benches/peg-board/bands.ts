import type { Point } from '../../figures/view.ts';
import { roundBands, roundLines } from './round-bands.ts';
import { extremeOf, gapAt, isFlat, type Tilt } from './tilt.ts';

/** A stretch of the back between two separations, as a closed run of places, mm. */
export interface Band {
  /** mm of separation, from and to; both below 0 where the bone is pressed */
  readonly from: number;
  readonly to: number;
  readonly line: readonly Point[];
}

const MOST_BANDS = 5;
const STEPS = [1, 2, 5] as const;

/** A round step that cuts a range into no more than five. */
export function roundStep(range: number): number {
  if (!(range > 0)) return 1;
  const decade = 10 ** Math.floor(Math.log10(range / MOST_BANDS));
  const step = STEPS.find((each) => range / (each * decade) <= MOST_BANDS + 1e-9) ?? 10;
  return Number((step * decade).toPrecision(3));
}

/**
 * The back cut along its lines of one separation, `step` mm apart from 0 outward, only where something lies between them.
 * They are straight where the back is flat, as it then stays a plane.
 */
export function bandsOf(
  edge: readonly Point[],
  tilt: Tilt,
  side: 'pressed' | 'open',
  step: number,
): readonly Band[] {
  const sign = side === 'open' ? 1 : -1;
  const most = Math.max(...[...edge, extremeOf(edge, tilt)].map((at) => sign * gapAt(tilt, at)));
  if (!(most > 1e-9) || !(step > 0)) return [];
  const ends = Array.from({ length: Math.ceil(most / step - 1e-9) }, (_, i) => {
    return [i * step, (i + 1) * step] as const;
  });
  if (!isFlat(tilt)) {
    const levels = ends.map(([low, high]) => [sign * low, sign * high] as const);
    return roundBands(edge, tilt, levels);
  }
  return ends
    .map(([low, high]) => {
      const above = cut(edge, (at) => sign * gapAt(tilt, at) - low);
      const line = cut(above, (at) => high - sign * gapAt(tilt, at));
      return { from: sign * low, to: sign * high, line };
    })
    .filter(({ line }) => line.length > 2);
}

/** A line of one separation on the back, mm. */
export interface LevelLine {
  readonly gap: number;
  readonly line: readonly Point[];
}

/** The lines of given separations; of one that is nowhere so there is none, and on a round back there may be two. */
export function linesOf(
  edge: readonly Point[],
  tilt: Tilt,
  gaps: readonly number[],
): readonly LevelLine[] {
  if (!isFlat(tilt)) return roundLines(edge, tilt, gaps);
  return gaps.flatMap((gap) => {
    const line = crossing(edge, tilt, gap);
    return line === null ? [] : [{ gap, line }];
  });
}

/** Where a line of one separation crosses a flat back, mm; null where it does not. */
export function crossing(
  edge: readonly Point[],
  tilt: Tilt,
  gap: number,
): readonly [Point, Point] | null {
  const ends = edge.flatMap((from, i) => {
    const to = edge[(i + 1) % edge.length] ?? from;
    const [a, b] = [gapAt(tilt, from) - gap, gapAt(tilt, to) - gap];
    return a < 0 === b < 0 ? [] : [between(from, to, a / (a - b))];
  });
  const [first, second] = ends;
  return first === undefined || second === undefined ? null : [first, second];
}

/** The part of a convex polygon where a linear function is not negative. */
function cut(polygon: readonly Point[], value: (at: Point) => number): readonly Point[] {
  return polygon.flatMap((from, i) => {
    const to = polygon[(i + 1) % polygon.length] ?? from;
    const [a, b] = [value(from), value(to)];
    const crossed = a < 0 === b < 0 ? [] : [between(from, to, a / (a - b))];
    return a < 0 ? crossed : [from, ...crossed];
  });
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
