import { clampedAsin, inRange } from './numeric.ts';
import { fittedRadius, radialMismatch, rimContactTranslation } from './mismatch.ts';
import { isFlat, type SphericalSocket } from './spherical-socket.ts';

/** Where a sideways translation has brought the ball: still on the hollow, or already on the rim. */
export type ContactPlace = 'inside' | 'rim';

/** The contact between ball and socket at one translation. */
export interface Contact {
  readonly place: ContactPlace;
  /** Tilt φ of the common normal from the socket's centre line, rad, 0 … π/2. */
  readonly angle: number;
}

/**
 * Where and at what tilt the ball touches the socket when its centre stands `translation` from the centre line.
 *
 * Inside the cup sin φ = x/m; over the rim sin φ = (w/2 − x)/r. A conforming pair (m = 0) is on the rim from the start.
 *
 * @param translation mm, 0 … width/2
 * @throws RangeError where the translation is outside that range, or the ball as in {@link radialMismatch}
 */
export function contactAt(
  socket: SphericalSocket,
  ballRadius: number,
  translation: number,
): Contact {
  const halfWidth = socket.width / 2;
  const mismatch = radialMismatch(socket, ballRadius);
  inRange('translation', translation, 0, halfWidth, 'mm (half the width)');
  if (isFlat(socket)) return { place: 'inside', angle: 0 };
  const rim = rimContactTranslation(socket, ballRadius);
  if (translation < rim) {
    return { place: 'inside', angle: withinArc(socket, translation / mismatch) };
  }
  // At first rim contact the tilt is β itself. The arc sine would lose half its digits there for a deep cup.
  if (translation === rim) return { place: 'rim', angle: socket.halfArc };
  return {
    place: 'rim',
    angle: withinArc(socket, (halfWidth - translation) / fittedRadius(socket, ballRadius)),
  };
}

/** The tilt of a given sine, kept from passing β by rounding. */
function withinArc(socket: SphericalSocket, sine: number): number {
  return Math.min(socket.halfArc, clampedAsin(sine));
}
