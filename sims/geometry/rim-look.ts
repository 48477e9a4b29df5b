import type { ContactSearch } from './contact-search.ts';
import {
  BASE,
  BOW,
  COSINE,
  EASE,
  HALF,
  LEAN,
  MIDDLE,
  NUMBERS,
  ofRay,
  SECANT,
  SINE,
  SLOPE,
} from './lip-rays.ts';
import type { RimRun } from './rim-samples.ts';

/**
 * Writes into `looked` the height of the ball's centre over every so many places of a piece of the rim, or over the best
 * place on the ray to it where a lip lies inward: −Infinity where the ball does not reach. Above the face by the ball's
 * radius.
 */
export function lookAlong(
  search: ContactSearch,
  { piece }: RimRun,
  from: number,
  to: number,
  stride: number,
): void {
  if (!piece.bearsLip) lookAlongRim(search, from, to, stride);
  else if (search.isBowed) lookAlongBow(search, from, to, stride);
  else lookAlongLip(search, from, to, stride);
}

function lookAlongRim(search: ContactSearch, from: number, to: number, stride: number): void {
  const { wide, cx, cy, looked } = search;
  const { x, y, z } = search.face.rim;
  for (let i = from; i <= to; i += stride) {
    const dx = (x[i] as number) - cx;
    const dy = (y[i] as number) - cy;
    const under = wide - dx * dx - dy * dy;
    looked[i] = under > 0 ? (z[i] as number) + Math.sqrt(under) : -Infinity;
  }
}

/**
 * The best place on a ray is where the chord across the lip is tangent to the ball, less the bow of the lip there; or the
 * rim or the inner edge, where that place lies beyond.
 */
function lookAlongLip(search: ContactSearch, from: number, to: number, stride: number): void {
  const { wide, cx, cy, looked } = search;
  const { rays } = search.face.rim;
  for (let i = from; i <= to; i += stride) {
    const n = NUMBERS * i;
    const cosine = rays[n + COSINE] as number;
    const sine = rays[n + SINE] as number;
    const along = cosine * cx + sine * cy;
    const across = cosine * cy - sine * cx;
    const room = wide - across * across;
    if (!(room > 0)) {
      looked[i] = -Infinity;
      continue;
    }
    const section = Math.sqrt(room);
    const half = rays[n + HALF] as number;
    const middle = rays[n + MIDDLE] as number;
    const slope = rays[n + SLOPE] as number;
    const bow = rays[n + BOW] as number;
    const off = along + section * (rays[n + LEAN] as number) - middle;
    // The lip itself is tangent further off, at off / rest, and the ball stands a little higher there.
    const rest = 1 - 2 * bow * section * (rays[n + EASE] as number);
    const level = (rays[n + BASE] as number) + slope * along;
    if (off < half * rest && off > -half * rest) {
      const bowed = bow * (half * half - (off * off) / rest);
      looked[i] = level + section * (rays[n + SECANT] as number) - bowed;
    } else {
      const ahead = middle + (off < 0 ? -half : half) - along;
      const under = room - ahead * ahead;
      looked[i] = under > 0 ? level + slope * ahead + Math.sqrt(under) : -Infinity;
    }
  }
}

function lookAlongBow(search: ContactSearch, from: number, to: number, stride: number): void {
  for (let i = from; i <= to; i += stride) search.looked[i] = heightOnBow(search, i);
}

/** The same by Newton on the ray, for lips so wide on so tight a curve that a chord does not do. */
function heightOnBow(search: ContactSearch, i: number): number {
  const { cx, cy, wide, kx, ky, lipSlope } = search;
  const { rays } = search.face.rim;
  const c = ofRay(rays, i, COSINE);
  const s = ofRay(rays, i, SINE);
  const along = c * cx + s * cy;
  const across = c * cy - s * cx;
  const room = wide - across * across;
  if (!(room > 0)) return -Infinity;
  const section = Math.sqrt(room);
  const inner = ofRay(rays, i, MIDDLE) - ofRay(rays, i, HALF);
  const outer = ofRay(rays, i, MIDDLE) + ofRay(rays, i, HALF);
  if (along - section >= outer || along + section <= inner) return -Infinity;
  const least = Math.max(inner, along - NEARLY * section);
  const most = Math.min(outer, along + NEARLY * section);
  // Along the ray the surface is z = k d² / (1 + √(1 − q d²)).
  const k = c * c * kx + s * s * ky;
  const q = c * c * kx * kx + s * s * ky * ky;
  let d = within(along + section * ofRay(rays, i, LEAN), least, most);
  for (let round = 0; round < 2; round++) {
    const w = Math.sqrt(Math.max(UPRIGHT, 1 - q * d * d));
    const ahead = d - along;
    const drop = Math.sqrt(room - ahead * ahead);
    const slope = (k * d) / w + lipSlope - ahead / drop;
    const bend = k / (w * w * w) - room / (drop * drop * drop);
    d = within(bend < 0 ? d - slope / bend : slope > 0 ? most : least, least, most);
  }
  const z = (k * d * d) / (1 + Math.sqrt(Math.max(0, 1 - q * d * d))) + lipSlope * (d - inner);
  return z + Math.sqrt(Math.max(0, room - (d - along) ** 2));
}

const within = (value: number, least: number, most: number): number =>
  value < least ? least : value > most ? most : value;

/** Share of the ball's reach beyond which the tangent stands all but upright. */
const NEARLY = 1 - 1e-9;

/** The square root of this is the least cosine of a slope of the surface. */
const UPRIGHT = 1e-8;
