import { localMaximum } from './local-maximum.ts';

/** A maximum is solved to this, mm: it is flat there, or a kink, or the upper end of a jump. */
const SOLVED = 1e-5;

/** How far to either side of the best place a look tells on which side the ratio still grows, mm. */
const PROBE = 3e-4;

/**
 * The greatest stability ratio between the middle and the crest.
 *
 * As the climb is the highest of many smooth curves, its slope may jump up where the contact goes over to another place,
 * never down. So a peak is smooth, or the kink at which the rim is first touched, or the upper end of a jump: every look
 * that is higher than its neighbours is followed up, if a peak beside it could be the greatest.
 *
 * @param translations rising, mm, with the ratio at each
 * @param rim translation of the first contact with the rim, mm
 * @param crest translation of the highest place, mm, beyond which nothing counts
 */
export function greatestRatio(
  translations: readonly number[],
  ratio: Float64Array,
  rim: number,
  crest: number,
  ratioAt: (translation: number) => number,
): number {
  const places: number[] = [];
  const values: number[] = [];
  let isRimIn = false;
  for (let i = 0; i < translations.length; i++) {
    const translation = translations[i] as number;
    if (!isRimIn && translation > rim) {
      places.push(rim);
      values.push(ratioAt(rim));
      isRimIn = true;
      // A ball that all but conforms has gone over to other places of the rim before it is a few times further out.
      for (let t = 1.5 * rim; rim > 0 && t < Math.min(translation, crest); t *= 1.5) {
        places.push(t);
        values.push(ratioAt(t));
      }
    }
    if (translation > crest) break;
    places.push(translation);
    values.push(ratio[i] as number);
  }
  let greatest = Math.max(...values);
  const peaks = values
    .map((value, i) => ({ i, value, mayReach: mayReach(values, i) }))
    .filter(({ i, value, mayReach }) => isPeak(values, i) && Math.max(value, mayReach) >= greatest)
    .sort((a, b) => b.value - a.value);
  for (const { i, value, mayReach } of peaks) {
    if (Math.max(value, mayReach) < greatest || greatest === Infinity) continue;
    const before = places[i - 1] ?? 0;
    const after = places[i + 1] ?? crest;
    greatest = Math.max(greatest, peakBeside(before, places[i] as number, after, value, ratioAt));
  }
  return greatest;
}

function isPeak(values: readonly number[], i: number): boolean {
  const here = values[i] as number;
  return here >= (values[i - 1] ?? -Infinity) && here >= (values[i + 1] ?? -Infinity);
}

/** What the ratio may grow to between a look and its neighbours, if it goes on as it does on the other side. */
function mayReach(values: readonly number[], i: number): number {
  const here = values[i] as number;
  return 2 * here - Math.min(values[i - 1] ?? here, values[i + 1] ?? here);
}

/** The maximum beside a look, on the side on which the ratio still grows; the look's own where it grows on neither. */
function peakBeside(
  before: number,
  place: number,
  after: number,
  value: number,
  ratioAt: (translation: number) => number,
): number {
  const ahead = Math.min(after, place + PROBE);
  if (ratioAt(ahead) > value) return localMaximum(ratioAt, place, after, ahead, SOLVED).value;
  const behind = Math.max(before, place - PROBE);
  if (ratioAt(behind) > value) return localMaximum(ratioAt, before, place, behind, SOLVED).value;
  return value;
}
