import { offer, readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { withDefect } from './face-shape.ts';
import { pressedOut } from './pressed-out.ts';
import { differentiateSurface } from './two-radius-surface.ts';

/**
 * Offers the contacts on the slope of the labral lip, between its inner edge and the rim. The inner edge itself is a
 * hollow corner, which no ball touches alone.
 *
 * The search starts from the highest places of a ring in the middle of the lip, from straight ahead where a ball may
 * touch the lip and yet reach no place of the ring, and from a contact on the rim that would rather be further inward.
 */
export function offerLip(search: ContactSearch): void {
  const { wide, cx, cy } = search;
  const { x, y, z, stride } = search.ring;
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
  const pressed = search.onRim ? pressedOut(search) : 0;
  const rimX = search.x;
  const rimY = search.y;
  if (best >= 0 && !isHeldByRim(search, best, pressed, rimX, rimY)) {
    settleOnLip(search, best * DEGREE);
  }
  if (next > highest - LEFT_OUT && !isHeldByRim(search, second, pressed, rimX, rimY)) {
    settleOnLip(search, second * DEGREE);
  }
  const isSmall = search.r < SMALL * search.lipWidth || search.lipSlope > STEEP;
  if (best < 0 || isSmall) settleOnLip(search, search.angle);
  if (pressed < 0) settleOnLip(search, Math.atan2(rimY, rimX));
}

/** Whether the contact on the rim at (x, y) is pressed outward so hard that the lip next to it bears nothing. */
function isHeldByRim(
  { ring }: ContactSearch,
  place: number,
  pressed: number,
  x: number,
  y: number,
): boolean {
  if (pressed < HARD) return false;
  const px = ring.x[place] as number;
  const py = ring.y[place] as number;
  const along = px * x + py * y;
  return along > 0 && along * along > NEXT_TO * (px * px + py * py) * (x * x + y * y);
}

/** Outward slope at the rim that is hard. */
const HARD = 0.1;

/** Square of the cosine of the angle, some 14°, up to which a place of the ring is next to one of the rim. */
const NEXT_TO = 0.94;

/** A ball below this many widths of the lip is small beside it. */
const SMALL = 3;

/** A lip that rises faster than this is a wall, and is touched far ahead of the ball. */
const STEEP = 1;

const DEGREE = Math.PI / 180;

/** A ring place this much lower than the highest (mm) is no start. */
const LEFT_OUT = 0.5;

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
 * From the middle of the lip in a direction, the place on it over which the ball's centre stands off by the sideways part
 * of the normal, r times: by Newton, as in the hollow, and the offer of what it finds.
 */
function settleOnLip(search: ContactSearch, start: number): void {
  const { face, r, kx, ky, cx, cy, lipSlope, lipWidth, derivatives } = search;
  readRadius(search, start);
  const middle = search.radius - lipWidth / 2;
  let x = middle * Math.cos(start);
  let y = middle * Math.sin(start);
  for (let turn = 0; turn < 20; turn++) {
    const distance = Math.sqrt(x * x + y * y);
    const angle = Math.atan2(y, x);
    readRadius(search, angle);
    const { radius, radius1, radius2 } = search;
    const outside = Math.abs(distance - radius + lipWidth / 2) / lipWidth - 0.5;
    if (outside > (turn === 1 ? 0.75 : 0.3)) return;
    differentiateSurface(derivatives, kx, ky, x, y);
    // The lip adds its slope away from the middle (a) and, where the outline goes away, across (b).
    const ax = x / distance;
    const ay = y / distance;
    const across = -(lipSlope * radius1) / distance;
    const zx = derivatives.zx + lipSlope * ax - across * ay;
    const zy = derivatives.zy + lipSlope * ay + across * ax;
    const bb = (lipSlope * (1 - radius2 / distance)) / distance;
    const ab = -across / distance;
    const zxx = derivatives.zxx + bb * ay * ay - 2 * ab * ax * ay;
    const zxy = derivatives.zxy - bb * ax * ay + ab * (ax * ax - ay * ay);
    const zyy = derivatives.zyy + bb * ax * ax + 2 * ab * ax * ay;
    const g = 1 / Math.sqrt(1 + zx * zx + zy * zy);
    const rg = r * g;
    const ex = x - rg * zx - cx;
    const ey = y - rg * zy - cy;
    const nx = zx * g;
    const ny = zy * g;
    const hx = nx * zxx + ny * zxy;
    const hy = nx * zxy + ny * zyy;
    const a11 = 1 - rg * (zxx - nx * hx);
    const a12 = -rg * (zxy - nx * hy);
    const a21 = -rg * (zxy - ny * hx);
    const a22 = 1 - rg * (zyy - ny * hy);
    const det = a11 * a22 - a12 * a21;
    // Not toward a peak but toward a pass: the ball rests on two places beside it.
    if (turn > 0 && !(det > 0 && a11 + a22 > 0)) return;
    const stepX = (a22 * ex - a12 * ey) / det;
    const stepY = (a11 * ey - a21 * ex) / det;
    const step = Math.abs(stepX) + Math.abs(stepY);
    if (step < SOLVED * r) {
      const rim = withDefect(face, angle, radius);
      if (distance > rim || distance < radius - lipWidth) return;
      const z = derivatives.z + lipSlope * (distance - radius + lipWidth);
      offer(search, x, y, z, false, distance / rim - 1);
      return;
    }
    const longest = LONGEST * radius;
    const shrink = step > longest ? longest / step : 1;
    x -= shrink * stepX;
    y -= shrink * stepY;
    if (!(x * x + y * y > 0)) return;
  }
}

/** A step this small, as a share of the ball's radius, is rounding. */
const SOLVED = 1e-8;

/** Newton goes no further than this at a time, as a share of the outline's radius. */
const LONGEST = 0.3;
