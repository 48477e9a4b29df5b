import { offer, readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { polarRadius } from './polar-table.ts';
import type { RimRun } from './rim-samples.ts';
import { differentiateSurface, surfaceZ } from './two-radius-surface.ts';

/**
 * Newton along one piece of the rim, from a place near a maximum, and the offer of what it finds: for pieces that bear no
 * lip, and for a ball that hardly reaches the rim at all. Place and height are those of the curve itself, not of anything
 * fitted through its samples.
 */
export function climbAlongRim(search: ContactSearch, candidate: number): void {
  const { wide, kx, ky, cx, cy, lipSlope, lipWidth, derivatives, found } = search;
  const { piece, first, last } = search.face.rim.pieces[found.piece[candidate] as number] as RimRun;
  const { isArc, closed, onLip, turn, inward, dx, dy } = piece;
  let v = ((found.index[candidate] as number) - first) / (last - first);
  let limit = search.stride / (last - first);
  for (let round = 0; round <= LAST_ROUND; round++) {
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
    if (isArc) {
      const angle = piece.from + turn * v;
      readRadius(search, angle);
      const distance = search.radius - inward;
      const outward = search.radius1 * turn;
      const c = search.cosine;
      const s = search.sine;
      x = distance * c;
      y = distance * s;
      tx = outward * c - turn * y;
      ty = outward * s + turn * x;
      const bend = turn * turn * (search.radius2 - distance);
      bx = bend * c - 2 * outward * turn * s;
      by = bend * s + 2 * outward * turn * c;
      if (onLip) rise = lipSlope * (lipWidth - inward);
    } else if (onLip) {
      // The step at the end of a segment runs along a ray, so the lip on it rises evenly.
      readRadius(search, Math.atan2(y, x));
      const distance = Math.sqrt(x * x + y * y);
      rise = lipSlope * (lipWidth - search.radius + distance);
      riseSlope = (lipSlope * (x * dx + y * dy)) / distance;
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
        zy * by -
        (tx * tx + ty * ty + qx * bx + qy * by + (along * along) / under) / drop;
      step = bend < 0 ? -slope / bend : slope > 0 ? limit : -limit;
      if (Math.abs(slope * step) < LEVEL) step = 0;
    } else {
      step = along < 0 ? limit : -limit;
    }
    if (step > limit) step = limit;
    else if (step < -limit) step = -limit;
    const isAtEnd = !closed && ((step < 0 && v === 0) || (step > 0 && v === 1));
    if (isAtEnd || step === 0 || round === LAST_ROUND) {
      if (isArc && search.isPointed) offerOnOutline(search, piece.from + turn * v, inward, rise);
      else offer(search, x, y, z + rise, true, 0);
      return;
    }
    v += step;
    // Shrinking steps, so that a search that swings to and fro comes to rest.
    if (round > 4) limit *= 0.7;
  }
}

/** Offers a place on an arc by the outline itself: near the tip of a pointed one the table of radii is too coarse. */
export function offerOnOutline(
  search: ContactSearch,
  angle: number,
  inward: number,
  rise: number,
): void {
  const distance = polarRadius(search.face.curve, angle).radius - inward;
  const x = distance * Math.cos(angle);
  const y = distance * Math.sin(angle);
  offer(search, x, y, surfaceZ(search.kx, search.ky, x, y) + rise, true, 0);
}

/** Where a step would raise the ball by less than this (mm), the place is found. */
const LEVEL = 1e-13;

/** A search that has not come to rest by then is where the tangent stands all but upright: its place is as good as any. */
const LAST_ROUND = 30;
