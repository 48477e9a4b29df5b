import { inRange } from './numeric.ts';

/** Either so many evenly spaced places, or the places themselves. */
export type CountOrList = number | readonly number[];

/**
 * A list of numbers from a count or a list.
 *
 * @param fromCount the place with a given index, of `count`
 * @throws RangeError for a count that is not a whole number from `least` up, an empty list, or one with an entry that is
 *   not finite
 */
export function listOf(
  name: string,
  countOrList: CountOrList,
  least: number,
  fromCount: (i: number, count: number) => number,
): readonly number[] {
  if (typeof countOrList === 'number') {
    inRange(name, countOrList, least, Infinity, 'places, or a list of them');
    if (!Number.isInteger(countOrList)) {
      throw new RangeError(`${name} is ${countOrList}; allowed: whole numbers from ${least} up`);
    }
    return Array.from({ length: countOrList }, (_, i) => fromCount(i, countOrList));
  }
  if (!Array.isArray(countOrList) || countOrList.length === 0) {
    throw new RangeError(
      `${name} is ${String(countOrList)}; allowed: a count or a list of numbers`,
    );
  }
  countOrList.forEach((value: unknown, i) => {
    if (!Number.isFinite(value)) {
      throw new RangeError(`${name}[${i}] is ${String(value)}; allowed: finite numbers`);
    }
  });
  return countOrList as readonly number[];
}

/** The places of a count, evenly from 0 to `end`. */
export const evenlyTo =
  (end: number) =>
  (i: number, count: number): number =>
    i === count - 1 ? end : (end * i) / (count - 1);

/** Looks are never further apart than this share of the way. */
const WIDEST_GAP = 1 / 40;

/** Rising translations from 0, continued to `end`, with more between two that are far apart. */
export function withoutGaps(translations: readonly number[], end: number): readonly number[] {
  const filled: number[] = [];
  let before = 0;
  for (const translation of [...translations, end]) {
    const pieces = Math.ceil((translation - before) / (end * WIDEST_GAP) - 1e-9);
    for (let i = 1; i < pieces; i++) filled.push(before + ((translation - before) * i) / pieces);
    if (translation > before || filled.length === 0) filled.push(translation);
    before = translation;
  }
  return filled;
}
