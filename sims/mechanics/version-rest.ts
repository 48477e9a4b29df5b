import type { SphericalSocket } from '../geometry/index.ts';
import { restPosition, type RestPosition, type RestState } from './rest-position.ts';
import { forceOnSocket, type ForceOnSocket, type SocketTilt, type Vector3 } from './version.ts';

/** A ball, the force on it, and a socket that is turned. */
export interface TiltedRestQuestion extends SocketTilt {
  readonly socket: SphericalSocket;
  /** mm, above 0 and at most the socket's radius of curvature */
  readonly ballRadius: number;
  /** On the ball, N, in the frame of the scapula. */
  readonly force: Vector3;
  /** Coulomb coefficient μ ≥ 0; 0 where it is left out. */
  readonly friction?: number | undefined;
}

/** The answer of {@link restUnderForce}. */
export interface TiltedRest extends Omit<RestPosition, 'state'> {
  /** As of `restPosition`, or that the force has no part that presses the ball in. */
  readonly state: RestState | 'pulled off the socket';
  /** The force in the socket's own frame. */
  readonly force: ForceOnSocket;
  /** Where the ball's centre stands, seen en face, mm: [anterior, superior] of the centre line; null where it has no rest. */
  readonly place: readonly [anterior: number, superior: number] | null;
}

/**
 * Where a ball comes to rest in a spherical socket with version and inclination, under a force given on the scapula.
 *
 * A spherical socket with a round rim is the same in every direction, so this is `restPosition` in the plane of the
 * force and the centre line.
 *
 * @throws RangeError as `restPosition` and `forceOnSocket`
 */
export function restUnderForce(question: TiltedRestQuestion): TiltedRest {
  const { socket, ballRadius, force, version, inclination, friction = 0 } = question;
  const felt = forceOnSocket({ force, version, inclination });
  if (felt.angle >= Math.PI / 2) {
    // Asked for a straight force, as the ball, friction and margin are still to be checked.
    const { marginAngle } = restPosition({ socket, ballRadius, forceAngle: 0, friction });
    return {
      translation: null,
      range: null,
      contactAngle: null,
      marginAngle: marginAngle - felt.angle,
      state: 'pulled off the socket',
      force: felt,
      place: null,
    };
  }
  const rest = restPosition({ socket, ballRadius, forceAngle: felt.angle, friction });
  const { translation } = rest;
  const place =
    translation === null
      ? null
      : ([translation * Math.cos(felt.direction), translation * Math.sin(felt.direction)] as const);
  return { ...rest, force: felt, place };
}
