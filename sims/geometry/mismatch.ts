import { LENGTH_TOLERANCE, positive } from './numeric.ts';
import { isFlat, type SphericalSocket } from './spherical-socket.ts';

/**
 * Radial mismatch, m = R − r: socket radius of curvature less ball radius, mm. The diametral mismatch is twice this.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @returns mm, 0 for a conforming pair, Infinity for a flat socket
 * @throws RangeError where the ball is not a finite positive radius or is larger than the socket's radius of curvature
 */
export function radialMismatch(socket: SphericalSocket, ballRadius: number): number {
  const { curvatureRadius } = socket;
  const unit = isFlat(socket) ? 'mm' : "mm (the socket's radius of curvature)";
  positive('ballRadius', ballRadius, unit, curvatureRadius);
  if (isFlat(socket)) return Infinity;
  const mismatch = curvatureRadius - ballRadius;
  return mismatch <= curvatureRadius * LENGTH_TOLERANCE ? 0 : mismatch;
}

/**
 * The ball's radius to compute with, mm: the socket's own radius where the two count as equal, so that a conforming
 * pair is exactly that in every formula.
 *
 * @throws RangeError as {@link radialMismatch}
 */
export function fittedRadius(socket: SphericalSocket, ballRadius: number): number {
  return radialMismatch(socket, ballRadius) === 0 ? socket.curvatureRadius : ballRadius;
}

/**
 * How far the ball's centre moves sideways before the ball touches the rim, x_rim = m sin β, mm.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @returns mm, 0 for a conforming pair; for a flat socket its limit, half the width
 * @throws RangeError as {@link radialMismatch}
 */
export function rimContactTranslation(socket: SphericalSocket, ballRadius: number): number {
  const mismatch = radialMismatch(socket, ballRadius);
  const halfWidth = socket.width / 2;
  if (isFlat(socket)) return halfWidth;
  // For a ball that is next to nothing rounding may carry the product a hair past the rim itself.
  return Math.min(halfWidth, mismatch * Math.sin(socket.halfArc));
}
