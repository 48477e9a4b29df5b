import { FLAT_TOLERANCE, clampedAsin, inRange, positive } from './numeric.ts';

/** A spherical socket cut off at its rim, seen in one plane through its centre line. */
export interface SphericalSocket {
  /** Radius of curvature of the articular surface, mm. Infinity for a flat socket. */
  readonly curvatureRadius: number;
  /** Rim-to-rim chord in the plane looked at, mm. */
  readonly width: number;
  /** Half of the arc from rim to rim, seen from the centre of curvature, rad, 0 (flat) to π/2 (hemisphere). */
  readonly halfArc: number;
  /** Distance from the plane of the rim to the deepest point, mm. */
  readonly depth: number;
}

/**
 * A socket from its radius of curvature and its width.
 *
 * @param shape.curvatureRadius mm, finite, at least half the width
 * @param shape.width mm, above 0
 * @returns the socket with its half arc, sin β = w / 2R, and its depth, d = R(1 − cos β)
 * @throws RangeError where either is not a finite positive number, or width/2 exceeds the radius
 *
 * Derivation: the rim lies on the circle of radius R at half a chord from the axis. The depth is taken as
 * 2R sin²(β/2), which keeps its digits for a shallow cup where 1 − cos β would lose them.
 */
export function sphericalSocket(shape: {
  readonly curvatureRadius: number;
  readonly width: number;
}): SphericalSocket {
  const curvatureRadius = positive('curvatureRadius', shape.curvatureRadius, 'mm');
  const unit = 'mm (twice the curvatureRadius)';
  const width = positive('width', shape.width, unit, 2 * curvatureRadius);
  const halfArc = clampedAsin(width / 2 / curvatureRadius);
  const depth = 2 * curvatureRadius * Math.sin(halfArc / 2) ** 2;
  return { curvatureRadius, width, halfArc, depth };
}

/**
 * A socket from its depth and its width.
 *
 * @param shape.depth mm, from 0 (a flat socket, whose radius of curvature is Infinity) to width/2 (a hemisphere)
 * @param shape.width mm, above 0
 * @throws RangeError where either is not finite, the width is not positive, or the depth is outside 0 … width/2
 *
 * Derivation: intersecting chords give R = (c² + d²) / 2d and tan(β/2) = d/c, with c half the width.
 */
export function socketFromDepth(shape: {
  readonly depth: number;
  readonly width: number;
}): SphericalSocket {
  const width = positive('width', shape.width, 'mm');
  const halfWidth = width / 2;
  const depth = inRange('depth', shape.depth, 0, halfWidth, 'mm (half the width)');
  if (depth < halfWidth * FLAT_TOLERANCE) {
    return { curvatureRadius: Infinity, width, halfArc: 0, depth: 0 };
  }
  const curvatureRadius = (halfWidth * (halfWidth / depth) + depth) / 2;
  return { curvatureRadius, width, halfArc: 2 * Math.atan2(depth, halfWidth), depth };
}

/** Whether the socket has no hollow at all. */
export function isFlat(socket: SphericalSocket): boolean {
  return socket.halfArc === 0;
}
