/**
 * Geometry of a ball in a shoulder socket: curves, contact, the ball's path. Pure, no DOM, imports nothing outside.
 * Lengths in mm, angles in rad. The names below are public and stable.
 */
export { ballPath, type BallPathRow } from './ball-path.ts';
export { climbAt } from './climb.ts';
export { contactAt, type Contact, type ContactPlace } from './contact-angle.ts';
export type { Defect, DefectKind } from './defect.ts';
export { directionMap, type DirectionRow } from './direction-map.ts';
export {
  face,
  faceArea,
  isOnFace,
  rimLine,
  rimPoint,
  surfaceHeight,
  surfaceSlope,
  type Face,
  type RimPoint,
} from './face.ts';
export type { FaceInput } from './face-shape.ts';
export type { Labrum } from './labrum.ts';
export { radialMismatch, rimContactTranslation } from './mismatch.ts';
export type { Outline, OutlineKind } from './outline.ts';
export { pathOverFace } from './path-over-face.ts';
export { profilePath, type ProfilePathRow, type ProfilePoint } from './profile-path.ts';
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
export type { CountOrList } from './translations.ts';
