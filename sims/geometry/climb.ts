import { contactAt } from './contact-angle.ts';
import { radialMismatch } from './mismatch.ts';
import { clampedSqrt } from './numeric.ts';
import { isFlat, type SphericalSocket } from './spherical-socket.ts';

/**
 * How far the ball's centre has climbed out of the socket when it stands `translation` from the centre line.
 *
 * Inside the cup m − √(m² − x²); over the rim d + √(r² − (w/2 − x)²) − r. Both pieces are written without the
 * difference of near-equal numbers. At width/2 the climb equals the depth, whatever the mismatch.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @param translation mm, 0 … width/2
 * @returns mm, 0 … depth
 * @throws RangeError as {@link contactAt}
 */
export function climbAt(socket: SphericalSocket, ballRadius: number, translation: number): number {
  const { place } = contactAt(socket, ballRadius, translation);
  if (isFlat(socket)) return 0;
  if (place === 'inside') return sagitta(radialMismatch(socket, ballRadius), translation);
  return Math.max(0, socket.depth - sagitta(ballRadius, socket.width / 2 - translation));
}

/** Height of a circular arc of the given radius over half a chord: r − √(r² − x²), mm. */
function sagitta(radius: number, halfChord: number): number {
  return halfChord ** 2 / (radius + clampedSqrt(radius ** 2 - halfChord ** 2));
}
