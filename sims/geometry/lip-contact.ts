import { offer, readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { withDefect } from './face-shape.ts';
import { differentiateSurface } from './two-radius-surface.ts';

/**
 * Offers the contacts on the slope of the labral lip, between its inner edge and the rim. The inner edge itself is a hollow corner, which no ball touches alone.
 *
 * Newton in the polar coordinates of the face starts from the highest places of a ring in the middle of the lip.
 */
export function offerLip(search: ContactSearch): void {
  const { wide, stride, cx, cy } = search;
  const { x, y, z } = search.ring;
  const count = x.length;
  let best = -1;
  let second = -1;
  let highest = -Infinity;
  let next = -Infinity;
  let before = centreHeight(x, y, z, count - stride, wide, cx, cy);
  let here = centreHeight(x, y, z, 0, wide, cx, cy);
  for (let i = 0; i < count; i += stride) {
    const after = centreHeight(x, y, z, i + stride < count ? i + stride : 0, wide, cx, cy);
    if (here >= before && here >= after && here > -Infinity) {
      if (here > highest) {
        second = best;
        next = highest;
        best = i;
        highest = here;
      } else if (here > next) {
        second = i;
        next = here;
      }
    }
    before = here;
    here = after;
  }
  if (best >= 0) climbOnLip(search, best * DEGREE, 0);
  if (second >= 0 && next > highest - LEFT_OUT) climbOnLip(search, second * DEGREE, 0);
  if (search.r < SMALL * search.lipWidth) {
    // So small a ball may stand over the lip and reach no place of the ring: start right under it.
    climbOnLip(search, search.angle, inwardUnder(search));
  }
}

/** How far inward of the outline a ball touches a lip that goes on for ever in the direction of the search. */
function inwardUnder(search: ContactSearch): number {
  const { derivatives, cx, cy, ux, uy, kx, ky } = search;
  differentiateSurface(derivatives, kx, ky, cx, cy);
  const slope = derivatives.zx * ux + derivatives.zy * uy + search.lipSlope;
  const ahead = (search.r * slope) / Math.hypot(1, slope);
  readRadius(search, search.angle);
  const inward = search.radius - Math.hypot(cx, cy) - ahead;
  return Math.max(0, Math.min(search.lipWidth, inward));
}

/** A ball below this many widths of the lip is small beside it. */
const SMALL = 3;

const DEGREE = Math.PI / 180;

/** A ring place this much lower than the highest (mm) is no start. */
const LEFT_OUT = 0.3;

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

/** Newton on the slope of the lip, from a direction and a way inward from the outline, and the offer of what it finds. */
function climbOnLip(search: ContactSearch, start: number, inward: number): void {
  const { face, kx, ky, cx, cy, wide, lipSlope, lipWidth, derivatives } = search;
  let angle = start;
  readRadius(search, angle);
  let distance = search.radius - inward;
  for (let turn = 0; turn < 25; turn++) {
    const ex = Math.cos(angle);
    const ey = Math.sin(angle);
    readRadius(search, angle);
    const x = distance * ex;
    const y = distance * ey;
    const qx = x - cx;
    const qy = y - cy;
    const under = wide - qx * qx - qy * qy;
    if (!(under > 0)) return;
    differentiateSurface(derivatives, kx, ky, x, y);
    // Slopes and second derivatives of surface and ball, away from the middle (a) and across (b).
    const drop = Math.sqrt(under);
    const qa = qx * ex + qy * ey;
    const qb = qy * ex - qx * ey;
    const za = derivatives.zx * ex + derivatives.zy * ey;
    const zb = derivatives.zy * ex - derivatives.zx * ey;
    const zaa =
      derivatives.zxx * ex * ex + 2 * derivatives.zxy * ex * ey + derivatives.zyy * ey * ey;
    const zab =
      (derivatives.zyy - derivatives.zxx) * ex * ey + derivatives.zxy * (ex * ex - ey * ey);
    const zbb =
      derivatives.zxx * ey * ey - 2 * derivatives.zxy * ex * ey + derivatives.zyy * ex * ex;
    const fa = za - qa / drop;
    const fb = zb - qb / drop;
    const faa = zaa - 1 / drop - (qa * qa) / (drop * under);
    const fab = zab - (qa * qb) / (drop * under);
    const fbb = zbb - 1 / drop - (qb * qb) / (drop * under);
    // The same by distance (s) and angle (t), with the lip added.
    const gs = fa + lipSlope;
    const gt = distance * fb - lipSlope * search.radius1;
    const gss = faa;
    const gst = fb + distance * fab;
    const gtt = distance * (distance * fbb - fa) - lipSlope * search.radius2;
    const det = gss * gtt - gst * gst;
    const isPeak = gss < 0 && det > 0;
    let stepS: number;
    let stepT: number;
    if (isPeak) {
      stepS = (gst * gt - gtt * gs) / det;
      stepT = (gst * gs - gss * gt) / det;
    } else {
      stepS = gss < 0 ? -gs / gss : Math.sign(gs) * lipWidth;
      stepT = gtt < 0 ? -gt / gtt : Math.sign(gt) * 0.05;
    }
    if (Math.abs(stepS) < SOLVED * distance && Math.abs(stepT) < SOLVED) {
      const rim = withDefect(face, angle, search.radius);
      if (!isPeak || distance > rim || distance < search.radius - lipWidth) return;
      const z = derivatives.z + lipSlope * (distance - search.radius + lipWidth);
      offer(search, x, y, z, false, distance / rim - 1);
      return;
    }
    // Still rising outward at the rim, there and on the rays next to it: the contact is the rim's.
    if (turn === 0 && inward === 0 && gs > Math.abs(gst) * search.stride * DEGREE) return;
    // A peak that lies well off the lip belongs to the hollow or to the rim.
    const outside = Math.abs(distance + stepS - search.radius + lipWidth / 2) / lipWidth - 0.5;
    if (isPeak) {
      if (outside > 0.4) return;
      // Nor does it matter where another contact bears the ball higher than this one ever will.
      const z = derivatives.z + lipSlope * (distance - search.radius + lipWidth);
      const peak = z + drop - search.r + (gs * stepS + gt * stepT) / 2;
      if (peak < search.height - LOWER) return;
    }
    if (turn > 0 && outside > 0.9) return;
    if (turn > 8 && outside > 0) return;
    distance += Math.max(-lipWidth / 2, Math.min(lipWidth / 2, stepS));
    angle += Math.max(-0.15, Math.min(0.15, stepT));
    if (distance < 0) return;
  }
}

const SOLVED = 1e-8;

/** A peak foreseen this much lower than the best contact (mm) is left alone. */
const LOWER = 0.1;
