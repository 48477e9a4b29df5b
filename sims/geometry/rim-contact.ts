import type { ContactSearch } from './contact-search.ts';
import { climbOnLip } from './lip-climb.ts';
import { climbAlongRim } from './rim-climb.ts';
import { lookAlong } from './rim-look.ts';
import type { RimRun } from './rim-samples.ts';

/**
 * Offers the contacts on the rim and on the labral lip inward of it.
 *
 * On every ray from the middle the ball touches one place best, on the lip or on the rim. So the search is one along the
 * rim: it looks at places a few degrees apart, closer where the best lie level, and follows every maximum up.
 */
export function offerRim(search: ContactSearch): void {
  const { found, stride } = search;
  const { pieces } = search.face.rim;
  found.count = 0;
  for (let p = 0; p < pieces.length; p++) {
    const run = pieces[p] as RimRun;
    lookAlong(search, run, run.first, run.last, stride);
    noteMaxima(search, p, run.first, run.last, stride);
  }
  if (found.count === 0) {
    findNearest(search);
    climbAlongRim(search, 0);
    return;
  }
  const best = highestFound(search);
  // What was looked at is sure, what is estimated between may be too high.
  let highest = search.height + search.r;
  for (let i = 0; i < found.count; i++) {
    highest = Math.max(highest, search.looked[found.place[i] as number] as number);
  }
  if (stride > 1) {
    lookBesideEnds(search, highest);
    if (isLevel(search, highest - LEVEL)) lookCloser(search, highest - LEVEL);
  }
  for (let turn = 0; turn < found.count; turn++) {
    // The best one first: most others are lower by what is known then.
    const i = turn === 0 ? best : turn <= best ? turn - 1 : turn;
    if ((found.height[i] as number) + (found.slack[i] as number) < highest) continue;
    const { piece } = pieces[found.piece[i] as number] as RimRun;
    if (piece.bearsLip) climbOnLip(search, i);
    else climbAlongRim(search, i);
    highest = Math.max(highest, search.height + search.r);
  }
}

/**
 * A maximum whose estimate is this much lower than the best height (mm) is not looked at more closely; and this share of
 * its bend from place to place, as an estimate of a sharp peak is poor.
 */
const LEFT_OUT = 0.06;
const OF_BEND = 0.1;

/** At the end of a piece there is no estimate: a maximum may hide between the last two places. */
const LEFT_OUT_AT_END = 0.2;

/** Neighbours both this near to the best height, mm, may hide another maximum between them. */
const LEVEL = 0.01;

/**
 * Notes the maxima among the places looked at, with place and height as a parabola through three places has them. Of a part
 * of a piece the two ends are not noted again.
 */
function noteMaxima(
  { found, looked, face }: ContactSearch,
  p: number,
  from: number,
  to: number,
  stride: number,
): void {
  const { piece, first, last } = face.rim.pieces[p] as RimRun;
  const beyond = from === first && to === last ? -Infinity : Infinity;
  const isRound = piece.closed && beyond === -Infinity;
  const { count } = found;
  let before = isRound ? (looked[last - stride] as number) : beyond;
  let here = looked[from] as number;
  const stop = isRound ? last - stride : to;
  for (let i = from; i <= stop; i += stride) {
    const after = i < to ? (looked[i + stride] as number) : beyond;
    if (here > before && here >= after) {
      const bend = 2 * here - before - after;
      const lean = after - before;
      const isBetween = bend > 0 && bend < Infinity;
      const n = note(found, p, i);
      found.index[n] = isBetween ? i + (stride * lean) / (2 * bend) : i;
      found.height[n] = isBetween ? here + (lean * lean) / (8 * bend) : here;
      found.slack[n] = isBetween ? LEFT_OUT + OF_BEND * bend : LEFT_OUT_AT_END;
    }
    before = here;
    here = after;
  }
  // Under a ball in the middle of a round face the whole ring may lie level: any place is then as good.
  if (isRound && found.count === count && here > -Infinity) {
    const n = note(found, p, first);
    found.index[n] = first;
    found.height[n] = here;
    found.slack[n] = LEFT_OUT_AT_END;
  }
}

/** Room for one more maximum, the last taking the place of those too many. @returns where it stands */
function note(found: ContactSearch['found'], piece: number, place: number): number {
  const n = found.count < found.index.length ? found.count++ : found.count - 1;
  found.piece[n] = piece;
  found.place[n] = place;
  return n;
}

function highestFound({ found }: ContactSearch): number {
  let best = 0;
  for (let i = 1; i < found.count; i++) {
    if ((found.height[i] as number) > (found.height[best] as number)) best = i;
  }
  return best;
}

/** Looks at every place next to a high end of a piece: another maximum may stand there close by. */
function lookBesideEnds(search: ContactSearch, highest: number): void {
  const { found, stride, looked } = search;
  const { count } = found;
  for (let n = 0; n < count; n++) {
    if ((found.height[n] as number) + (found.slack[n] as number) < highest) continue;
    const p = found.piece[n] as number;
    const run = search.face.rim.pieces[p] as RimRun;
    const place = found.place[n] as number;
    if (run.piece.closed || (place !== run.first && place !== run.last)) continue;
    const inward = place === run.first ? stride : -stride;
    // A parabola through the end and the next two places falls from the end so steeply that nothing rises beside it.
    const next = (looked[place + inward] as number) - (looked[place] as number);
    const further = (looked[place + 2 * inward] as number) - (looked[place + inward] as number);
    const isLong = run.last - run.first >= 2 * stride;
    if (isLong && (3 * next - further) / 2 < -FALLS) continue;
    const from = inward > 0 ? place : place - stride;
    lookAlong(search, run, from + 1, from + stride - 1, 1);
    noteMaxima(search, p, from, from + stride, 1);
  }
}

/** mm over one stride. */
const FALLS = 0.05;

/** Looks at every place between neighbours that are both above a height. */
function lookCloser(search: ContactSearch, above: number): void {
  const { looked, stride } = search;
  const { pieces } = search.face.rim;
  for (let p = 0; p < pieces.length; p++) {
    const run = pieces[p] as RimRun;
    for (let i = run.first; i < run.last; i += stride) {
      if (!((looked[i] as number) > above && (looked[i + stride] as number) > above)) continue;
      lookAlong(search, run, i + 1, i + stride - 1, 1);
      noteMaxima(search, p, i, i + stride, 1);
    }
  }
}

/** Whether a neighbour of a maximum is above a height as well. */
function isLevel({ found, looked, stride, face }: ContactSearch, above: number): boolean {
  for (let n = 0; n < found.count; n++) {
    if (!((found.height[n] as number) > above)) continue;
    const { piece, first, last } = face.rim.pieces[found.piece[n] as number] as RimRun;
    const place = found.place[n] as number;
    const before = place > first ? place - stride : piece.closed ? last - stride : place;
    if (before !== place && (looked[before] as number) > above) return true;
    if (place < last && (looked[place + stride] as number) > above) return true;
  }
  return false;
}

/** For a ball so small that it may stand between two places: the one nearest to it. */
function findNearest({ face, found, cx, cy }: ContactSearch): void {
  const { x, y, pieces } = face.rim;
  let least = Infinity;
  for (let p = 0; p < pieces.length; p++) {
    const { first, last } = pieces[p] as RimRun;
    for (let i = first; i <= last; i++) {
      const distance = ((x[i] as number) - cx) ** 2 + ((y[i] as number) - cy) ** 2;
      if (distance >= least) continue;
      least = distance;
      found.count = 1;
      found.index[0] = i;
      found.piece[0] = p;
    }
  }
}
