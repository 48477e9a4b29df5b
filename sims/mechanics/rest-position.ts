import {
  balanceStabilityAngle,
  contactAt,
  frictionAngle,
  isFlat,
  radialMismatch,
  rimContactTranslation,
  type SphericalSocket,
} from '../geometry/index.ts';

/** Where a steady force leaves the ball, in words. */
export type RestState = 'centred' | 'off-centre' | 'at the rim' | 'over the rim';

/** The answer of {@link restPosition}. */
export interface RestPosition {
  /**
   * Translation of the ball's centre, mm, as friction lets go little by little; null where no place inside the socket
   * is one of rest. Friction makes every place of `range` a place of rest too.
   */
  readonly translation: number | null;
  /**
   * Innermost and outermost translation, from the centre line to first rim contact, at which friction can hold the
   * ball, mm; null when over the rim. On a flat socket the ball stays wherever it is put: 0 to half the width.
   */
  readonly range: readonly [inner: number, outer: number] | null;
  /** Tilt φ of the contact normal at `translation`, rad; null when over the rim. */
  readonly contactAngle: number | null;
  /** Balance stability angle less force angle, rad; negative where the force has left the arc. */
  readonly marginAngle: number;
  readonly state: RestState;
}

/** A ball pressed into a socket by one steady force. */
export interface RestQuestion {
  readonly socket: SphericalSocket;
  /** mm, above 0 and at most the socket's radius of curvature */
  readonly ballRadius: number;
  /** Angle α between the force and the socket's centre line, rad, 0 ≤ α < π/2. */
  readonly forceAngle: number;
  /** Coulomb coefficient μ ≥ 0; 0 where it is left out. */
  readonly friction?: number;
}

/**
 * Where a rigid ball comes to rest under a force tilted by α from the socket's centre line.
 *
 * The contact can only push along its normal, so without friction the ball rests where φ = α: at x = m sin α while
 * α < β. At α ≥ β there is no such place and it goes over the rim. Friction μ = tan λ holds it at any φ with
 * |φ − α| ≤ λ, and on the rim up to α < β + λ.
 *
 * @throws RangeError for a force angle outside 0 … π/2, a negative friction, or a ball larger than the socket's radius
 */
export function restPosition({
  socket,
  ballRadius,
  forceAngle,
  friction = 0,
}: RestQuestion): RestPosition {
  if (!Number.isFinite(forceAngle) || forceAngle < 0 || forceAngle >= Math.PI / 2) {
    throw new RangeError(`forceAngle is ${forceAngle}; allowed: 0 to below π/2 rad`);
  }
  const lambda = frictionAngle(friction);
  const marginAngle = balanceStabilityAngle(socket, friction) - forceAngle;
  const rim = rimContactTranslation(socket, ballRadius);
  const isCentredFlat = isFlat(socket) && forceAngle === 0;
  if (marginAngle <= 0 && !isCentredFlat) {
    return {
      translation: null,
      range: null,
      contactAngle: null,
      marginAngle,
      state: 'over the rim',
    };
  }
  const mismatch = radialMismatch(socket, ballRadius);
  const place = (angle: number): number => {
    if (angle <= 0 || isFlat(socket)) return 0;
    return angle >= socket.halfArc ? rim : Math.min(rim, mismatch * Math.sin(angle));
  };
  const translation = place(forceAngle);
  const isHeldOnRim = forceAngle >= socket.halfArc && !isFlat(socket);
  return {
    translation,
    range: isFlat(socket) ? [0, rim] : [place(forceAngle - lambda), place(forceAngle + lambda)],
    contactAngle: Math.min(forceAngle, contactAt(socket, ballRadius, rim).angle),
    marginAngle,
    state: isHeldOnRim ? 'at the rim' : translation === 0 ? 'centred' : 'off-centre',
  };
}
