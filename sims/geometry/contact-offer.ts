import type { ContactSearch } from './contact-search.ts';
import { POLAR_STEPS } from './polar-table.ts';

/** Turns the search to a direction, rad. */
export function turnTo(search: ContactSearch, angle: number): void {
  search.angle = angle;
  search.ux = Math.cos(angle);
  search.uy = Math.sin(angle);
}

/**
 * Reads the outline's radius and its derivatives at an angle from the table, by Hermite's cubic, and the angle's cosine and
 * sine from those of the table's nearest place, turned by the small rest.
 */
export function readRadius(search: ContactSearch, angle: number): void {
  const { radius, slope } = search.face.polar;
  const turns = angle / (2 * Math.PI);
  const place = (turns - Math.floor(turns)) * POLAR_STEPS;
  const i = Math.min(POLAR_STEPS - 1, Math.floor(place));
  const v = place - i;
  const step = (2 * Math.PI) / POLAR_STEPS;
  const from = radius[i] ?? 0;
  const start = (slope[i] ?? 0) * step;
  const end = (slope[i + 1] ?? 0) * step;
  const rise = (radius[i + 1] ?? 0) - from;
  const c2 = 3 * rise - 2 * start - end;
  const c3 = start + end - 2 * rise;
  search.radius = from + v * (start + v * (c2 + v * c3));
  search.radius1 = (start + v * (2 * c2 + 3 * v * c3)) / step;
  search.radius2 = (2 * c2 + 6 * v * c3) / (step * step);
  // Up to half a degree, so that the next terms are below 1e-16.
  const rest = v * step;
  const square = rest * rest;
  const cosine = 1 - (square / 2) * (1 - (square / 12) * (1 - square / 30));
  const sine = rest * (1 - (square / 6) * (1 - (square / 20) * (1 - square / 42)));
  const c = cosines[i] as number;
  const s = sines[i] as number;
  search.cosine = c * cosine - s * sine;
  search.sine = s * cosine + c * sine;
}

const cosines = Float64Array.from({ length: POLAR_STEPS }, (_, i) =>
  Math.cos((2 * Math.PI * i) / POLAR_STEPS),
);
const sines = Float64Array.from({ length: POLAR_STEPS }, (_, i) =>
  Math.sin((2 * Math.PI * i) / POLAR_STEPS),
);

/**
 * Notes a contact at (x, y) whose ball centre would be this high, if it is higher than the best so far. Of two that are
 * level the one that resists outward motion more is kept.
 */
export function offer(
  search: ContactSearch,
  x: number,
  y: number,
  z: number,
  onRim: boolean,
  inside: number,
): void {
  const dx = x - search.cx;
  const dy = y - search.cy;
  if (dx * dx + dy * dy > search.wide) return;
  const height = heightOver(search, dx, dy, z);
  const level = LEVEL * search.r;
  if (height < search.height - level) return;
  const ratio = ratioOf(search, dx, dy);
  if (height <= search.height + level && ratio <= search.ratio) return;
  search.height = height;
  search.ratio = ratio;
  search.x = x;
  search.y = y;
  search.onRim = onRim;
  search.inside = inside;
}

/** Slope by which the ball's centre rises outward over a contact (dx, dy) from it: outward part over drop. */
export function ratioOf(search: ContactSearch, dx: number, dy: number): number {
  const under = search.rr - dx * dx - dy * dy;
  const outward = dx * search.ux + dy * search.uy;
  if (under > UPRIGHT * search.rr) return outward / Math.sqrt(under);
  return outward > 0 ? Infinity : -Infinity;
}

/**
 * Height over the face of a ball's centre, less its radius, that a contact (dx, dy) from it at height z would give:
 * z + √(r² − d²) − r without the loss of digits.
 */
export function heightOver(search: ContactSearch, dx: number, dy: number, z: number): number {
  const dd = dx * dx + dy * dy;
  return z - dd / (search.r + Math.sqrt(Math.max(0, search.rr - dd)));
}

/** Heights as near as this, as a share of the ball's radius, are level. */
const LEVEL = 1e-13;

/** Below this share of r² under the root the tangent at the contact stands upright: within 1e-7 rad. */
const UPRIGHT = 1e-14;
