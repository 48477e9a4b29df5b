import { climbAt, isFlat, radialMismatch, sphericalSocket } from '../geometry/index.ts';
import type { SphericalSocket } from '../geometry/index.ts';
import { fittedRadius } from '../geometry/mismatch.ts';

/**
 * A ball over the hollow of a spherical socket, in the plane of its translation: x along it, z out of the socket, the
 * origin at the deepest point.
 *
 * Seen from the hollow's centre C, the ball's surface stands at distance √(r² − e² sin²α) + e cos α in the direction that
 * lies α off the line through both centres, e apart. What that is more than R is the penetration, and nothing else enters:
 * the same all round that line. So the pressed part of a whole sphere is a cap about it, of half angle γ, and on the
 * socket it is that cap cut by the rim.
 */
export interface CapContact {
  readonly curvatureRadius: number;
  readonly ballRadius: number;
  readonly mismatch: number;
  readonly halfArc: number;
  readonly halfWidth: number;
  readonly depth: number;
  readonly translation: number;
  /** How much lower the centre of the rigid ball stands than C, mm; negative where it has climbed above. */
  readonly rigidFall: number;
  /** Whether the rigid ball would still touch the hollow rather than the rim. */
  readonly isInside: boolean;
}

/** Where the ball stands after a drop below first touch. */
export interface CapPose {
  /** Angle of the line from C through the ball's centre, from the centre line, rad. */
  readonly tilt: number;
  /** Distance e of the two centres, mm. */
  readonly distance: number;
  /** e − m, mm: penetration where that line meets the sphere. */
  readonly excess: number;
  /** Half angle γ of the pressed cap, rad; 0 where nothing is pressed. */
  readonly reach: number;
}

/** A flat socket is computed as a sphere this many times its width in radius: its depth is then lost in rounding. */
const FLAT_RADII = 1e6;

/**
 * @param translation mm, 0 … width/2
 * @throws RangeError for a ball or translation as in `climbAt`
 */
export function capContact(
  socket: SphericalSocket,
  ballRadius: number,
  translation: number,
): CapContact {
  const climb = climbAt(socket, ballRadius, translation);
  const { width } = socket;
  const hollow = isFlat(socket)
    ? sphericalSocket({ curvatureRadius: Math.max(width, ballRadius) * FLAT_RADII, width })
    : socket;
  const mismatch = radialMismatch(hollow, ballRadius);
  const isInside = translation < mismatch * Math.sin(hollow.halfArc);
  return {
    curvatureRadius: hollow.curvatureRadius,
    ballRadius: fittedRadius(hollow, ballRadius),
    mismatch,
    halfArc: hollow.halfArc,
    halfWidth: width / 2,
    depth: hollow.depth,
    translation,
    rigidFall: isInside
      ? Math.sqrt((mismatch - translation) * (mismatch + translation))
      : mismatch - climb,
    isInside,
  };
}

/** The pose after a drop (mm). */
export function poseAfter(cap: CapContact, drop: number): CapPose {
  const { curvatureRadius, ballRadius, mismatch, translation, rigidFall } = cap;
  const fall = rigidFall + drop;
  const distance = Math.sqrt(translation ** 2 + fall ** 2);
  // e² − m² as a product: the difference of the squares would lose the digits of a small drop.
  const squares = cap.isInside
    ? drop * (2 * rigidFall + drop)
    : translation ** 2 + (fall - mismatch) * (fall + mismatch);
  const excess = distance + mismatch > 0 ? squares / (distance + mismatch) : 0;
  const square = (excess * (2 * ballRadius - excess)) / (4 * curvatureRadius * distance);
  const reach = excess > 0 ? 2 * Math.asin(Math.sqrt(Math.min(1, square))) : 0;
  return { tilt: Math.atan2(translation, fall), distance, excess, reach };
}

/** Penetration (mm) along the socket's normal at α (rad) from the line of centres; 0 beyond the pressed cap. */
export function penetrationOnCap(cap: CapContact, pose: CapPose, alpha: number): number {
  const { distance, excess, reach } = pose;
  if (alpha >= reach) return 0;
  const { curvatureRadius, ballRadius } = cap;
  const spread = Math.min(ballRadius, distance * Math.sin(alpha));
  const gap = ballRadius - excess + 2 * distance * Math.sin(alpha / 2) ** 2;
  const cosines = Math.sin((reach + alpha) / 2) * Math.sin((reach - alpha) / 2);
  return (
    (4 * curvatureRadius * distance * cosines) /
    (Math.sqrt((ballRadius - spread) * (ballRadius + spread)) + gap)
  );
}

/** The deepest penetration (mm): where the line of centres meets the hollow, or at the rim where it passes beyond. */
export function deepestOnCap(cap: CapContact, pose: CapPose): number {
  return penetrationOnCap(cap, pose, Math.max(0, pose.tilt - cap.halfArc));
}

/**
 * The drop (mm) at which the deepest penetration reaches the layer's whole thickness, or the ball's radius where that is
 * less: of a ball buried deeper the sphere below its equator would count as pressed.
 */
export function dropThroughLayer(cap: CapContact, thickness: number): number {
  const { mismatch, translation, halfArc, halfWidth, ballRadius, rigidFall } = cap;
  const deepest = Math.min(thickness, ballRadius);
  const through = mismatch + deepest;
  if (translation <= through * Math.sin(halfArc)) {
    return Math.sqrt((through - translation) * (through + translation)) - rigidFall;
  }
  const across = halfWidth + deepest * Math.sin(halfArc) - translation;
  const centre =
    cap.depth -
    deepest * Math.cos(halfArc) +
    Math.sqrt((ballRadius - across) * (ballRadius + across));
  return cap.curvatureRadius - rigidFall - centre;
}
