import { contactAt } from './contact-angle.ts';
import { fittedRadius, radialMismatch } from './mismatch.ts';
import { isFlat, type SphericalSocket } from './spherical-socket.ts';

/**
 * How far the ball's centre has climbed out of the socket when it stands `translation` from the centre line.
 *
 * Inside the cup m − √(m² − x²), which is m(1 − cos φ); over the rim d + √(r² − (w/2 − x)²) − r, which is
 * m(1 − cos β) + r(cos φ − cos β). Both are computed as products of sines, so that no digits are lost where a small
 * climb would be the difference of large numbers. At width/2 the climb equals the depth, whatever the mismatch.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @param translation mm, 0 … width/2
 * @returns mm, 0 … depth
 * @throws RangeError as {@link contactAt}
 */
export function climbAt(socket: SphericalSocket, ballRadius: number, translation: number): number {
  const { place, angle } = contactAt(socket, ballRadius, translation);
  if (isFlat(socket)) return 0;
  const mismatch = radialMismatch(socket, ballRadius);
  if (place === 'inside') return mismatch * cosineDrop(0, angle);
  const beta = socket.halfArc;
  const radius = fittedRadius(socket, ballRadius);
  const climb = mismatch * cosineDrop(0, beta) + radius * cosineDrop(angle, beta);
  return Math.min(socket.depth, climb);
}

/** cos a − cos b as a product, for 0 ≤ a ≤ b ≤ π. */
function cosineDrop(a: number, b: number): number {
  return 2 * Math.sin((b + a) / 2) * Math.sin((b - a) / 2);
}
