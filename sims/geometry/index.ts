/**
 * Geometry of a ball in a shoulder socket: curves, contact, the ball's path. Pure, no DOM, imports nothing outside.
 * Lengths in mm, angles in rad. The names below are public and stable.
 */
export { ballPath, type BallPathRow } from './ball-path.ts';
export { climbAt } from './climb.ts';
export { contactAt, type Contact, type ContactPlace } from './contact-angle.ts';
export { radialMismatch, rimContactTranslation } from './mismatch.ts';
export {
  isFlat,
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from './spherical-socket.ts';
export {
  balanceStabilityAngle,
  frictionAngle,
  peakStabilityRatio,
  stabilityRatioAt,
} from './stability-ratio.ts';
