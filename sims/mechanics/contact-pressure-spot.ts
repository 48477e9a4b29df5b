import type { Face } from '../geometry/index.ts';
import { withDefect } from '../geometry/face-shape.ts';
import { POLAR_STEPS } from '../geometry/polar-table.ts';
import { differentiateSurface, type SurfaceDerivatives } from '../geometry/two-radius-surface.ts';

/** A ball over a face: what never changes while it is pressed in. */
export interface BallOverFace {
  readonly face: Face;
  readonly ballRadius: number;
  /** Where the ball's centre stands, seen en face, mm. */
  readonly cx: number;
  readonly cy: number;
  /** Room for the place looked at, and for a look along a ray: both are filled thousands of times. */
  readonly spot: Spot;
  readonly profile: Profile;
}

/** Steps of a look along each part of a ray, inward of the lip and on it. */
export const LOOKS = 8;

/** What a look along a part of a ray has met: rising places, and how high the ball touches there. */
export interface Profile {
  count: number;
  readonly at: Float64Array;
  readonly height: Float64Array;
}

/** A place on the face with its slopes. The labral lip is in them. */
export interface Spot extends SurfaceDerivatives {
  x: number;
  y: number;
}

/** A ball with its centre over a place of a face, seen en face, mm. */
export function ballOver(face: Face, ballRadius: number, cx: number, cy: number): BallOverFace {
  return {
    face,
    ballRadius,
    cx,
    cy,
    spot: { x: 0, y: 0, z: 0, zx: 0, zy: 0, zxx: 0, zxy: 0, zyy: 0 },
    // Every other place may have a peak beside it.
    profile: {
      count: 0,
      at: new Float64Array(2 * LOOKS + 2),
      height: new Float64Array(2 * LOOKS + 2),
    },
  };
}

/** A ray from the middle of the face to what is left of its rim. */
export interface Ray {
  readonly angle: number;
  readonly cosine: number;
  readonly sine: number;
  /** The outline on the ray, mm, and its change with the angle. */
  readonly outline: number;
  readonly slope: number;
  /** The rim that is left, mm. */
  readonly end: number;
  /** Where the labral lip begins, mm; `end` where there is none. */
  readonly lip: number;
}

/** The ray in a direction. The outline is read from the face's table by Hermite's cubic, good to some 1e-8 mm. */
export function rayAt(face: Face, angle: number): Ray {
  const { polar, labrum } = face;
  const turns = angle / (2 * Math.PI);
  const place = (turns - Math.floor(turns)) * POLAR_STEPS;
  const i = Math.min(POLAR_STEPS - 1, Math.floor(place));
  const v = place - i;
  const step = (2 * Math.PI) / POLAR_STEPS;
  const from = polar.radius[i] ?? NaN;
  const rise = (polar.radius[i + 1] ?? NaN) - from;
  const start = (polar.slope[i] ?? NaN) * step;
  const end = (polar.slope[i + 1] ?? NaN) * step;
  const square = 3 * rise - 2 * start - end;
  const cube = start + end - 2 * rise;
  const outline = from + v * (start + v * (square + v * cube));
  const left = withDefect(face, angle, outline);
  return {
    angle,
    cosine: Math.cos(angle),
    sine: Math.sin(angle),
    outline,
    slope: (start + v * (2 * square + 3 * v * cube)) / step,
    end: left,
    lip: labrum === undefined ? left : Math.min(left, outline - labrum.width),
  };
}

/** mm. Where a lip is as wide as the face its slope in the very middle has no direction. */
const NO_DISTANCE = 1e-9;

/** Takes the spot to a place at a distance (mm) along a ray, on the lip or inward of it. */
export function goTo(
  { face, spot }: BallOverFace,
  ray: Ray,
  distance: number,
  onLip: boolean,
): void {
  spot.x = distance * ray.cosine;
  spot.y = distance * ray.sine;
  const { curvatureRadiusAP, curvatureRadiusSI, labrum } = face;
  differentiateSurface(spot, 1 / curvatureRadiusAP, 1 / curvatureRadiusSI, spot.x, spot.y);
  if (!onLip || labrum === undefined) return;
  const steepness = labrum.height / labrum.width;
  spot.z += labrum.height - steepness * (ray.outline - distance);
  const turn = ray.slope / Math.max(distance, NO_DISTANCE);
  spot.zx += steepness * (ray.cosine + turn * ray.sine);
  spot.zy += steepness * (ray.sine - turn * ray.cosine);
}

/** How high the ball's centre stands if it just touches the spot, mm; −Infinity where it is out of reach. */
export function touchHeight({ ballRadius, cx, cy, spot }: BallOverFace): number {
  const under = ballRadius ** 2 - (spot.x - cx) ** 2 - (spot.y - cy) ** 2;
  return under >= 0 ? spot.z + Math.sqrt(under) : -Infinity;
}

/**
 * Penetration (mm) at the spot, along the surface's normal, of a ball whose centre stands at this height; 0 where it does
 * not reach. With b = n·(c − P) it is √(b² + r² − |c − P|²) − b, here without the difference of two large numbers.
 */
export function penetrationAtSpot(
  { ballRadius, cx, cy, spot }: Pick<BallOverFace, 'ballRadius' | 'cx' | 'cy' | 'spot'>,
  height: number,
): number {
  const dx = cx - spot.x;
  const dy = cy - spot.y;
  const under = ballRadius ** 2 - dx * dx - dy * dy;
  if (under < 0) return 0;
  const root = Math.sqrt(under);
  const dz = height - spot.z;
  // r² − |c − P|² as a product; its first factor is how far the spot has come into the ball.
  const inside = (root - dz) * (root + dz);
  if (!(inside > 0)) return 0;
  const stretch = Math.sqrt(1 + spot.zx * spot.zx + spot.zy * spot.zy);
  const b = (dz - spot.zx * dx - spot.zy * dy) / stretch;
  return inside / (Math.sqrt(b * b + inside) + b);
}
