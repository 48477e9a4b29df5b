import { offer } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { BOW, EASE, LEAN, MIDDLE, ofRay } from './lip-rays.ts';
import { goToRay, settleOnRay } from './lip-ray.ts';
import { offerOnOutline } from './rim-climb.ts';
import type { RimRun } from './rim-samples.ts';

/**
 * From near a maximum along a piece of the rim to the best contact on the lip inward of it or on its edge, and the offer
 * of it.
 *
 * With G(θ) the height of the ball's centre over the best place of the ray at θ, its slope and bend follow from the
 * derivatives of f(θ, d) there: G' = fθ and G'' = fθθ − fθd²/fdd where that place is free, and those along the edge where
 * it is on the edge. Newton for the greatest G keeps between rays from which G rises toward each other.
 */
export function climbOnLip(search: ContactSearch, candidate: number): void {
  const { found, ray, face } = search;
  const run = face.rim.pieces[found.piece[candidate] as number] as RimRun;
  const { piece, first, last } = run;
  const index = found.index[candidate] as number;
  const nearest = Math.min(last, Math.max(first, Math.round(index)));
  // Between the neighbours of a place that is higher than both there is a maximum.
  const { stride } = search;
  let before = (found.place[candidate] as number) - stride;
  let after = before + 2 * stride;
  let low = angleWithin(search, run, before);
  let high = angleWithin(search, run, after);
  let isLowKnown = false;
  let isHighKnown = false;
  let angle = angleAt(search, run, index);
  let good = angleAt(search, run, nearest);
  let limit = (high - low) / 2;
  let start = NaN;
  for (let round = 0; round < LAST_ROUND; round++) {
    if (!goToRay(search, piece, angle)) {
      // Back toward a ray that the ball reaches.
      if (Math.abs(angle - good) < 1e-12) return;
      angle = round < 3 ? (angle + good) / 2 : good;
      continue;
    }
    good = angle;
    if (start !== start) start = firstGuess(search, nearest);
    const isFree = settleOnRay(search, start);
    if (round === 0 && isLeftOut(search, found.slack[candidate] as number)) return;
    const { d, fd, ft, fdd, ftd, ftt, edge1, edge2 } = ray;
    const slope = isFree ? ft - (ftd * fd) / fdd : ft + fd * edge1;
    const bend = isFree
      ? ftt - (ftd * ftd) / fdd
      : ftt + 2 * ftd * edge1 + fdd * edge1 * edge1 + fd * edge2;
    let step = bend < 0 ? -slope / bend : slope > 0 ? limit : -limit;
    // What was looked at is an estimate: the maximum may yet lie beyond a neighbour.
    if (slope > 0 && angle === high && (piece.closed || after < last)) {
      after += stride;
      high = angleWithin(search, run, after);
    } else if (slope <= 0 && angle === low && (piece.closed || before > first)) {
      before -= stride;
      low = angleWithin(search, run, before);
    }
    const isAtEnd = slope > 0 ? angle === high : angle === low;
    if (isAtEnd || Math.abs(slope * step) < LEVEL || round === LAST_ROUND - 1) {
      offerRay(search, run, isFree, isAtEnd);
      return;
    }
    if (slope > 0) {
      low = angle;
      isLowKnown = true;
    } else {
      high = angle;
      isHighKnown = true;
    }
    if (step > limit) step = limit;
    else if (step < -limit) step = -limit;
    let next = angle + step;
    if (next >= high) next = isHighKnown ? (angle + high) / 2 : high;
    else if (next <= low) next = isLowKnown ? (angle + low) / 2 : low;
    start = d + (isFree ? -ftd / fdd : edge1) * (next - angle);
    angle = next;
    if (round > 6) limit *= 0.7;
  }
}

/** Angle of the ray to a place of a run that may lie between two: along an arc, or along the edge of a cut. */
function angleAt({ face }: ContactSearch, { piece, first, last }: RimRun, index: number): number {
  const v = (index - first) / (last - first);
  if (piece.isArc) return piece.from + piece.turn * v;
  const direction = face.defect?.direction ?? 0;
  const x = piece.x + piece.dx * v;
  const y = piece.y + piece.dy * v;
  return direction + Math.atan2(y * Math.cos(direction) - x * Math.sin(direction), face.cutAt);
}

/** The same, at an end of a run that is not closed for what lies beyond it. */
function angleWithin(search: ContactSearch, run: RimRun, index: number): number {
  const { piece, first, last } = run;
  return angleAt(search, run, piece.closed ? index : Math.min(last, Math.max(first, index)));
}

/** Where the ray at hand is touched: where the chord is tangent to the ball, and on to where the bowed lip is. */
function firstGuess({ ray, face }: ContactSearch, i: number): number {
  const { rays } = face.rim;
  const section = Math.sqrt(ray.room);
  const onChord = ray.along + section * ofRay(rays, i, LEAN);
  const share = 2 * ofRay(rays, i, BOW) * section * ofRay(rays, i, EASE);
  const off = onChord - ofRay(rays, i, MIDDLE);
  return share < 0.8 ? onChord + (off * share) / (1 - share) : onChord;
}

/** Whether the ball's centre over the ray at hand stands so much lower than it does already that no climb makes up for it. */
function isLeftOut({ ray, height, r }: ContactSearch, slack: number): boolean {
  const under = ray.room - (ray.d - ray.along) ** 2;
  return ray.z + Math.sqrt(under) + slack < height + r;
}

/** Offers the place found on the ray at hand: on the lip if it is short of the edge. */
function offerRay(search: ContactSearch, run: RimRun, isFree: boolean, isAtEnd: boolean): void {
  const { ray, lipWidth, lipSlope } = search;
  const { x, y, z } = search.face.rim;
  const { piece, first, last } = run;
  if (isFree) {
    if (ray.d < search.radius - lipWidth) return;
    offer(search, ray.d * ray.cosine, ray.d * ray.sine, ray.z, false, ray.d / ray.edge - 1);
  } else if (isAtEnd) {
    const end = ray.angle < angleAt(search, run, (first + last) / 2) ? first : last;
    offer(search, x[end] as number, y[end] as number, z[end] as number, true, 0);
  } else if (piece.isArc && search.isPointed) {
    const rise = lipSlope * (lipWidth - piece.inward);
    offerOnOutline(search, ray.angle, piece.inward, rise);
  } else {
    offer(search, ray.d * ray.cosine, ray.d * ray.sine, ray.z, true, 0);
  }
}

/** Where a step would raise the ball by less than this (mm), the place is found. */
const LEVEL = 1e-13;

const LAST_ROUND = 60;
