import type { ContactSearch } from './contact-search.ts';
import { differentiateSurface, surfaceZ } from './two-radius-surface.ts';

/**
 * Climbs to a peak of the height of the ball's centre over the places of the hollow, h = z + √(r² − dist²), from a place
 * the ball reaches: for a ball that all but fits one of the two radii, under which h has more than one peak, or passes.
 * Steps are Newton's where h bends downward in every direction, and follow the slope where it does not.
 *
 * @returns whether it has come to a peak, which `derivatives` then stands at, with its place in `peak`
 */
export function climbHollow(
  { rr, r, kx, ky, cx, cy, derivatives, radius, peak }: ContactSearch,
  fromX: number,
  fromY: number,
): boolean {
  let x = fromX;
  let y = fromY;
  for (let round = 0; round < LAST_ROUND; round++) {
    const qx = x - cx;
    const qy = y - cy;
    const under = rr - qx * qx - qy * qy;
    if (!(under > 0)) return false;
    const drop = Math.sqrt(under);
    differentiateSurface(derivatives, kx, ky, x, y);
    const gx = derivatives.zx - qx / drop;
    const gy = derivatives.zy - qy / drop;
    const tight = 1 / drop;
    const axx = tight + (qx * qx * tight) / under - derivatives.zxx;
    const axy = (qx * qy * tight) / under - derivatives.zxy;
    const ayy = tight + (qy * qy * tight) / under - derivatives.zyy;
    const least = (axx + ayy) / 2 - Math.hypot((axx - ayy) / 2, axy);
    // An upward bend counts as a downward one.
    const more = least > 0 ? 0 : Math.max(-2 * least, LEAST_BEND / r - least);
    const det = (axx + more) * (ayy + more) - axy * axy;
    let dx = ((ayy + more) * gx - axy * gy) / det;
    let dy = ((axx + more) * gy - axy * gx) / det;
    const step = Math.hypot(dx, dy);
    if (step < SOLVED * r) {
      peak.x = x;
      peak.y = y;
      return more === 0;
    }
    const shrink = Math.min(1, (LONGEST * radius) / step);
    dx *= shrink;
    dy *= shrink;
    const here = derivatives.z + drop;
    for (let halving = 0; halving < 8; halving++) {
      const left = rr - (qx + dx) ** 2 - (qy + dy) ** 2;
      if (left > 0 && surfaceZ(kx, ky, x + dx, y + dy) + Math.sqrt(left) >= here) break;
      dx /= 2;
      dy /= 2;
    }
    x += dx;
    y += dy;
    if (kx * kx * x * x + ky * ky * y * y > 1) return false;
  }
  return false;
}

/** A step this small, as a share of the ball's radius, is none. */
const SOLVED = 1e-9;

/** Least bend of h that a step is made by, as a share of the ball's curvature. */
const LEAST_BEND = 1e-5;

/** Longest step, as a share of the outline's radius. */
const LONGEST = 0.2;

const LAST_ROUND = 40;
