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
  positive('ballRadius', ballRadius, 'mm');
  const { curvatureRadius } = socket;
  if (ballRadius > curvatureRadius * (1 + LENGTH_TOLERANCE)) {
    throw new RangeError(
      `ballRadius is ${ballRadius}; allowed: above 0 to ${curvatureRadius} mm (the socket's radius of curvature)`,
    );
  }
  const mismatch = curvatureRadius - ballRadius;
  return mismatch <= curvatureRadius * LENGTH_TOLERANCE ? 0 : mismatch;
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
  return isFlat(socket) ? socket.width / 2 : mismatch * Math.sin(socket.halfArc);
}
