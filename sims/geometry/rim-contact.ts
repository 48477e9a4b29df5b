import { offer, readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import type { RimRun } from './rim-samples.ts';
import { differentiateSurface } from './two-radius-surface.ts';

/** A maximum whose estimate is this much lower than the best one (mm) is not looked at more closely. */
const LEFT_OUT = 0.06;

/** At the end of a piece there is no estimate: a maximum may hide between the last two places. */
const LEFT_OUT_AT_END = 0.2;

/** Offers the contacts on the rim. */
export function offerRim(search: ContactSearch): void {
  lookAlongRim(search);
  const { found } = search;
  let highest = -Infinity;
  for (let i = 0; i < found.count; i++) highest = Math.max(highest, found.height[i] as number);
  for (let i = 0; i < found.count; i++) {
    if ((found.height[i] as number) + (found.slack[i] as number) < highest) continue;
    climbAlongRim(search, i);
  }
}

/** Coarse look: notes every local maximum, with its place and height as a parabola through three places has them. */
function lookAlongRim(search: ContactSearch): void {
  const { wide, stride, found, cx, cy } = search;
  const { x, y, z, pieces } = search.face.rim;
  found.count = 0;
  for (let p = 0; p < pieces.length; p++) {
    const { piece, first, last } = pieces[p] as RimRun;
    const { closed } = piece;
    let here = centreHeight(x, y, z, first, wide, cx, cy);
    let before = closed ? centreHeight(x, y, z, last - stride, wide, cx, cy) : -Infinity;
    const stop = closed ? last - stride : last;
    for (let i = first; i <= stop; i += stride) {
      const after = i < last ? centreHeight(x, y, z, i + stride, wide, cx, cy) : -Infinity;
      if (here >= before && here >= after && here > -Infinity) {
        const bend = 2 * here - before - after;
        const lean = after - before;
        const inner = bend > 0 && bend < Infinity;
        const n = found.count < found.index.length ? found.count++ : found.count - 1;
        found.piece[n] = p;
        found.index[n] = inner ? i + (stride * lean) / (2 * bend) : i;
        found.height[n] = inner ? here + (lean * lean) / (8 * bend) : here;
        found.slack[n] = inner ? LEFT_OUT : LEFT_OUT_AT_END;
      }
      before = here;
      here = after;
    }
  }
}

function centreHeight(
  x: Float64Array,
  y: Float64Array,
  z: Float64Array,
  i: number,
  wide: number,
  cx: number,
  cy: number,
): number {
  const dx = (x[i] as number) - cx;
  const dy = (y[i] as number) - cy;
  const under = wide - dx * dx - dy * dy;
  return under > 0 ? (z[i] as number) + Math.sqrt(under) : -Infinity;
}

/**
 * Newton along one piece of the rim, from a place near a maximum, and the offer of what it finds. Place and height are
 * those of the curve itself, not of anything fitted through its samples.
 */
function climbAlongRim(search: ContactSearch, candidate: number): void {
  const { wide, kx, ky, cx, cy, lipSlope, lipWidth, derivatives, found } = search;
  const { piece, first, last } = search.face.rim.pieces[found.piece[candidate] as number] as RimRun;
  const { isArc, closed, onLip, turn, inward, dx, dy } = piece;
  let v = ((found.index[candidate] as number) - first) / (last - first);
  let limit = search.stride / (last - first);
  for (let round = 0; round < 30; round++) {
    if (!closed) v = v < 0 ? 0 : v > 1 ? 1 : v;
    // Place, and its first and second derivatives by v.
    let x = piece.x + dx * v;
    let y = piece.y + dy * v;
    let tx = dx;
    let ty = dy;
    let bx = 0;
    let by = 0;
    let rise = 0;
    let riseSlope = 0;
    let riseBend = 0;
    if (isArc) {
      const angle = piece.from + turn * v;
      readRadius(search, angle);
      const distance = search.radius - inward;
      const outward = search.radius1 * turn;
      const c = Math.cos(angle);
      const s = Math.sin(angle);
      x = distance * c;
      y = distance * s;
      tx = outward * c - turn * y;
      ty = outward * s + turn * x;
      const bend = turn * turn * (search.radius2 - distance);
      bx = bend * c - 2 * outward * turn * s;
      by = bend * s + 2 * outward * turn * c;
      if (onLip) rise = lipSlope * (lipWidth - inward);
    } else if (onLip) {
      readRadius(search, Math.atan2(y, x));
      const distance = Math.sqrt(x * x + y * y);
      const away = (x * dx + y * dy) / distance;
      const spin = (x * dy - y * dx) / (distance * distance);
      rise = lipSlope * (lipWidth - search.radius + distance);
      riseSlope = lipSlope * (away - search.radius1 * spin);
      riseBend =
        lipSlope *
        (spin * spin * (distance - search.radius2) + (2 * search.radius1 * away * spin) / distance);
    }
    differentiateSurface(derivatives, kx, ky, x, y);
    const { z, zx, zy, zxx, zxy, zyy } = derivatives;
    const qx = x - cx;
    const qy = y - cy;
    const under = wide - qx * qx - qy * qy;
    const along = qx * tx + qy * ty;
    let step: number;
    if (under > 0) {
      const drop = Math.sqrt(under);
      const slope = zx * tx + zy * ty + riseSlope - along / drop;
      const bend =
        zxx * tx * tx +
        2 * zxy * tx * ty +
        zyy * ty * ty +
        zx * bx +
        zy * by +
        riseBend -
        (tx * tx + ty * ty + qx * bx + qy * by + (along * along) / under) / drop;
      step = bend < 0 ? -slope / bend : slope > 0 ? limit : -limit;
      if (Math.abs(slope * step) < LEVEL) step = 0;
    } else {
      step = along < 0 ? limit : -limit;
    }
    if (step > limit) step = limit;
    else if (step < -limit) step = -limit;
    const isAtEnd = !closed && ((step < 0 && v === 0) || (step > 0 && v === 1));
    if (isAtEnd || step === 0) {
      offer(search, x, y, z + rise, true, 0);
      return;
    }
    v += step;
    // Shrinking steps, so that a search that swings to and fro comes to rest.
    if (round > 4) limit *= 0.7;
  }
}

/** Where a step would raise the ball by less than this (mm), the place is found. */
const LEVEL = 1e-13;
