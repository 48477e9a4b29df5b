import { contactAt } from './contact-angle.ts';
import { RIGHT_ANGLE, inRange, slopeOf } from './numeric.ts';
import type { SphericalSocket } from './spherical-socket.ts';

/** Friction angle λ (rad) of a Coulomb friction coefficient μ = tan λ ≥ 0; RangeError otherwise. */
export function frictionAngle(friction: number): number {
  return Math.atan(inRange('friction', friction, 0, Infinity, ''));
}

/**
 * Stability ratio: side force ÷ compressive load that just moves the ball further out from `translation`.
 *
 * Statics of a rigid ball on one contact tilted by φ, with Coulomb friction μ = tan λ: tan(φ + λ).
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @param translation mm, 0 … width/2
 * @param friction coefficient μ ≥ 0; 0 where it is left out
 * @returns the ratio, 0 and up; Infinity where φ + λ reaches a right angle and no side force moves the ball
 * @throws RangeError as {@link contactAt}, and for a friction that is negative or not finite
 */
export function stabilityRatioAt(
  socket: SphericalSocket,
  ballRadius: number,
  translation: number,
  friction = 0,
): number {
  const lambda = frictionAngle(friction);
  return slopeOf(contactAt(socket, ballRadius, translation).angle + lambda);
}

/**
 * The greatest stability ratio on the way out, tan(β + λ), met where the ball first touches the rim.
 *
 * It depends on the arc alone: neither the ball's radius nor the mismatch enters.
 *
 * @param friction coefficient μ ≥ 0; 0 where it is left out
 * @returns the ratio, 0 and up; Infinity where β + λ reaches a right angle
 * @throws RangeError for a friction that is negative or not finite
 */
export function peakStabilityRatio(socket: SphericalSocket, friction = 0): number {
  return slopeOf(balanceStabilityAngle(socket, friction));
}

/**
 * Balance stability angle: the largest angle between the force on the ball and the socket's centre line at which the
 * socket still holds it. The arc tangent of the peak ratio, so β + λ, at most a right angle.
 *
 * @param friction coefficient μ ≥ 0; 0 where it is left out
 * @returns rad, 0 … π/2
 * @throws RangeError for a friction that is negative or not finite
 */
export function balanceStabilityAngle(socket: SphericalSocket, friction = 0): number {
  return Math.min(RIGHT_ANGLE, socket.halfArc + frictionAngle(friction));
}
