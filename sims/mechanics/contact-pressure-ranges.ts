import { localMaximum } from '../geometry/local-maximum.ts';
import { signChange } from '../geometry/sign-change.ts';

/** A function of one variable, looked at often enough to know where it is high: rising places and the values there. */
export interface Looked {
  readonly at: readonly number[];
  readonly value: readonly number[];
}

/** An interval in which the function is above a level. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/**
 * Looks at `f` at `count` + 1 places from `from` to `to`, and at each of its peaks between them, so that no peak is
 * missed however narrow the part of it that will be above a level.
 *
 * @param tolerance of the place of a peak
 */
export function lookAlong(
  f: (t: number) => number,
  from: number,
  to: number,
  count: number,
  tolerance: number,
): Looked {
  const places = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  const values = places.map(f);
  const at: number[] = [];
  const value: number[] = [];
  const keep = (place: number, height: number): void => {
    at.push(place);
    value.push(height);
  };
  for (let i = 0; i <= count; i++) {
    const here = values[i] ?? -Infinity;
    const before = values[i - 1] ?? -Infinity;
    const after = values[i + 1] ?? -Infinity;
    const place = places[i] ?? from;
    const isPeak = here >= before && here >= after && (here > before || here > after);
    if (!isPeak || here === -Infinity) {
      keep(place, here);
      continue;
    }
    const low = places[i - 1] ?? from;
    const high = places[i + 1] ?? to;
    const peak = localMaximum(f, low, high, place, tolerance);
    if (peak.at < place) keep(peak.at, peak.value);
    keep(place, here);
    if (peak.at > place) keep(peak.at, peak.value);
  }
  return { at, value };
}

/** The highest value met. */
export function highestOf({ value }: Looked): number {
  return value.reduce((highest, height) => Math.max(highest, height), -Infinity);
}

/**
 * The intervals in which a function that has been looked at is above a level.
 *
 * @param tolerance of their ends
 */
export function rangesAbove(
  f: (t: number) => number,
  { at, value }: Looked,
  level: number,
  tolerance: number,
): readonly Range[] {
  const ranges: Range[] = [];
  const above = (t: number): number => f(t) - level;
  const crossing = (i: number): number =>
    signChange(
      above,
      at[i] ?? NaN,
      finite((value[i] ?? NaN) - level),
      at[i + 1] ?? NaN,
      finite((value[i + 1] ?? NaN) - level),
      tolerance,
    );
  let from = (value[0] ?? -Infinity) > level ? at[0] : undefined;
  for (let i = 0; i + 1 < at.length; i++) {
    const isIn = (value[i] ?? -Infinity) > level;
    const willBeIn = (value[i + 1] ?? -Infinity) > level;
    if (!isIn && willBeIn) from = crossing(i);
    if (isIn && !willBeIn && from !== undefined) {
      ranges.push({ from, to: crossing(i) });
      from = undefined;
    }
  }
  if (from !== undefined) ranges.push({ from, to: at.at(-1) ?? from });
  return ranges.filter((range) => range.to > range.from);
}

/** A ball out of reach gives −Infinity, which no interpolation can use. */
function finite(value: number): number {
  return Math.max(-1e3, value);
}
