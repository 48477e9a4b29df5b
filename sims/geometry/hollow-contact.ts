import { offer, readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { withDefect } from './face-shape.ts';
import { climbHollow } from './hollow-climb.ts';
import { LENGTH_TOLERANCE } from './numeric.ts';
import { differentiateSurface, surfaceZ } from './two-radius-surface.ts';

/**
 * Offers the contact inside the hollow, inward of the lip, if there is one.
 *
 * The ball's centre stands over p − r·n, with p the contact and n the sideways part of the normal there; this is solved
 * for p by Newton. On a sphere the first guess, c R/(R − r), is the answer.
 *
 * @returns whether there is one
 */
export function offerHollow(search: ContactSearch): boolean {
  const { r, kx, ky, cx, cy, derivatives } = search;
  if (!search.fitsHollow) return false;
  let x = cx / (1 - kx * r);
  let y = cy / (1 - ky * r);
  const s = kx * kx * x * x + ky * ky * y * y;
  if (search.hollowDecides || kx === ky) {
    if (s > 1 + LENGTH_TOLERANCE) return false;
    return offerInside(search, x, y);
  }
  readRadius(search, Math.atan2(y, x));
  if (x * x + y * y > (FAR * search.radius) ** 2) return false;
  if (s > STEEPEST) {
    x *= Math.sqrt(STEEPEST / s);
    y *= Math.sqrt(STEEPEST / s);
  }
  for (let i = 0; i < 20; i++) {
    differentiateSurface(derivatives, kx, ky, x, y);
    const { zx, zy, zxx, zxy, zyy } = derivatives;
    const g = 1 / Math.sqrt(1 + zx * zx + zy * zy);
    const rg = r * g;
    const ex = x - rg * zx - cx;
    const ey = y - rg * zy - cy;
    // Along the slope the normal turns less for a change of slope than across it.
    const bx = zx * g;
    const by = zy * g;
    const hx = bx * zxx + by * zxy;
    const hy = bx * zxy + by * zyy;
    const a11 = 1 - rg * (zxx - bx * hx);
    const a12 = -rg * (zxy - bx * hy);
    const a21 = -rg * (zxy - by * hx);
    const a22 = 1 - rg * (zyy - by * hy);
    const det = a11 * a22 - a12 * a21;
    if (!(det > 0) || !(a11 + a22 > 0)) break;
    const stepX = (a22 * ex - a12 * ey) / det;
    const stepY = (a11 * ey - a21 * ex) / det;
    if (Math.abs(stepX) + Math.abs(stepY) < SOLVED * r) {
      x -= stepX;
      y -= stepY;
      return offerInside(search, x, y);
    }
    x -= stepX;
    y -= stepY;
    const steep = kx * kx * x * x + ky * ky * y * y;
    if (steep > STEEPEST) {
      x *= Math.sqrt(STEEPEST / steep);
      y *= Math.sqrt(STEEPEST / steep);
    }
  }
  return offerPeaks(search);
}

/**
 * Of a ball that all but fits the tighter of the two curves, and so may touch the hollow on two sides of the place where it
 * would touch alone.
 */
function offerPeaks(search: ContactSearch): boolean {
  const { kx, ky, r, cx, cy, radius, peak } = search;
  const reach = ASIDE * radius;
  const least = 0.1;
  const x = cx / Math.max(least, 1 - kx * r);
  const y = cy / Math.max(least, 1 - ky * r);
  const shrink = Math.min(1, radius / Math.hypot(x, y));
  let isFound = false;
  for (const side of [-reach, reach]) {
    const fromX = shrink * x + (kx > ky ? side : 0);
    const fromY = shrink * y + (ky > kx ? side : 0);
    if (climbHollow(search, fromX, fromY) && offerInside(search, peak.x, peak.y)) isFound = true;
  }
  return isFound;
}

/** How far to either side the climb begins, as a share of the outline's radius. */
const ASIDE = 0.15;

/** A step this small, as a share of the ball's radius, leaves an error of its square. */
const SOLVED = 1e-5;

/** With a first guess this far beyond the outline, as a share of its radius, the contact is not inside it. */
const FAR = 1.4;

/** Newton is kept off the line where the surface stands upright. */
const STEEPEST = 0.999;

function offerInside(search: ContactSearch, x: number, y: number): boolean {
  const { face, lipWidth, kx, ky } = search;
  const angle = Math.atan2(y, x);
  readRadius(search, angle);
  const distance = Math.sqrt(x * x + y * y);
  const rim = withDefect(face, angle, search.radius);
  if (distance > Math.min(rim, search.radius - lipWidth) * (1 + 1e-12)) return false;
  offer(search, x, y, surfaceZ(kx, ky, x, y), false, distance / rim - 1);
  return true;
}
