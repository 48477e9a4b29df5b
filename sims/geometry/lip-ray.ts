import { readRadius } from './contact-offer.ts';
import type { ContactSearch } from './contact-search.ts';
import type { RimPiece } from './rim-pieces.ts';
import { differentiateSurface } from './two-radius-surface.ts';

/**
 * One ray from the middle over a labral lip, and the height f(θ, d) of the ball's centre over a contact on it, with θ the
 * angle of the ray and d the distance from the middle.
 */
export interface LipRay {
  angle: number;
  cosine: number;
  sine: number;
  /** Distance of the rim, mm, and its derivatives by θ. */
  edge: number;
  edge1: number;
  edge2: number;
  /** Where the ball's centre stands, along the ray and across it, and the square of the ball's reach along it. */
  along: number;
  across: number;
  room: number;

  /** The place looked at, and the height of the lip there. */
  d: number;
  z: number;
  /** Derivatives of f there. */
  fd: number;
  ft: number;
  fdd: number;
  ftd: number;
  ftt: number;
}

export const freshRay = (): LipRay => ({
  angle: 0,
  cosine: 1,
  sine: 0,
  edge: 0,
  edge1: 0,
  edge2: 0,
  along: 0,
  across: 0,
  room: 0,
  d: 0,
  z: 0,
  fd: 0,
  ft: 0,
  fdd: 0,
  ftd: 0,
  ftt: 0,
});

/** Turns to the ray at an angle. @returns whether the ball reaches anything on it */
export function goToRay(search: ContactSearch, piece: RimPiece, angle: number): boolean {
  const { ray, face, cx, cy } = search;
  readRadius(search, angle);
  ray.angle = angle;
  ray.cosine = search.cosine;
  ray.sine = search.sine;
  ray.along = ray.cosine * cx + ray.sine * cy;
  ray.across = ray.cosine * cy - ray.sine * cx;
  ray.room = search.wide - ray.across * ray.across;
  if (piece.isArc) {
    ray.edge = search.radius - piece.inward;
    ray.edge1 = search.radius1;
    ray.edge2 = search.radius2;
  } else {
    const off = angle - (face.defect?.direction ?? 0);
    const tangent = Math.tan(off);
    ray.edge = face.cutAt / Math.cos(off);
    ray.edge1 = ray.edge * tangent;
    ray.edge2 = ray.edge * (1 + 2 * tangent * tangent);
  }
  return ray.room > 0 && ray.along - Math.sqrt(ray.room) < ray.edge;
}

/** Looks at the place at a distance on the ray. */
function lookAt(search: ContactSearch, d: number): void {
  const { ray, derivatives, lipSlope, lipWidth } = search;
  const { cosine, sine, along, across, room } = ray;
  const x = d * cosine;
  const y = d * sine;
  differentiateSurface(derivatives, search.kx, search.ky, x, y);
  const { zx, zy, zxx, zxy, zyy } = derivatives;
  const ahead = d - along;
  const under = room - ahead * ahead;
  const drop = Math.sqrt(under);
  const outward = zx * cosine + zy * sine;
  const around = zy * cosine - zx * sine;
  const lean = across / drop;
  ray.d = d;
  ray.z = derivatives.z + lipSlope * (d - search.radius + lipWidth);
  ray.fd = outward + lipSlope - ahead / drop;
  ray.ft = d * (around + lean) - lipSlope * search.radius1;
  ray.fdd =
    zxx * cosine * cosine + 2 * zxy * cosine * sine + zyy * sine * sine - room / (under * drop);
  ray.ftd =
    around +
    d * ((zyy - zxx) * cosine * sine + zxy * (cosine * cosine - sine * sine)) +
    lean +
    (d * lean * ahead) / under;
  ray.ftt =
    d * d * (zxx * sine * sine - 2 * zxy * cosine * sine + zyy * cosine * cosine) -
    d * outward -
    lipSlope * search.radius2 -
    (d * (along + d * lean * lean)) / drop;
}

/**
 * Finds the best place on the ray, beginning at a distance the ball reaches: where f no longer rises outward, or the edge.
 *
 * @returns whether it is short of the edge
 */
export function settleOnRay(search: ContactSearch, start: number): boolean {
  const { ray, r } = search;
  const { edge, along, room } = ray;
  const reach = Math.sqrt(room);
  let d = start < edge ? start : edge;
  if (!(Math.abs(d - along) < reach)) d = Math.min(along, edge);
  for (let round = 0; round < LAST_ROUND; round++) {
    lookAt(search, d);
    if (d === edge && ray.fd >= 0) return false;
    // Where f bends upward there is no best place but the edge.
    let next = ray.fdd < 0 ? d - ray.fd / ray.fdd : ray.fd > 0 ? Infinity : -Infinity;
    if (next > along + reach) next = (d + along + reach) / 2;
    else if (next < along - reach) next = (d + along - reach) / 2;
    if (next >= edge) next = edge;
    else if (Math.abs(next - d) < SOLVED * r) break;
    d = next;
  }
  return true;
}

/** A step this small, as a share of the ball's radius, leaves an error of its square. */
const SOLVED = 1e-7;

const LAST_ROUND = 40;
