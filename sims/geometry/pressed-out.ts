import { readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import { differentiateSurface } from './two-radius-surface.ts';

/**
 * How hard the contact on the rim is pressed outward: the slope by which the ball would rise if the contact could go on
 * outward on the surface. 0 where it is about to come off the rim; negative where the ball would rather touch further
 * inward.
 */
export function pressedOut(search: ContactSearch): number {
  const { x, y, cx, cy, derivatives, kx, ky } = search;
  const distance = Math.sqrt(x * x + y * y);
  const ex = x / distance;
  const ey = y / distance;
  const qx = x - cx;
  const qy = y - cy;
  const drop = Math.sqrt(Math.max(UPRIGHT * search.rr, search.rr - qx * qx - qy * qy));
  differentiateSurface(derivatives, kx, ky, x, y);
  readRadius(search, Math.atan2(y, x));
  const isOnLip = search.radius - distance < search.lipWidth * (1 - 1e-9);
  const rise = derivatives.zx * ex + derivatives.zy * ey + (isOnLip ? search.lipSlope : 0);
  return rise - (qx * ex + qy * ey) / drop;
}

/** Share of r² under the root where the tangent at the contact is as good as upright. */
const UPRIGHT = 1e-14;
