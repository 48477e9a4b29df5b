import { foundationModulus, type CarriedContact } from '../../mechanics/index.ts';
import { layerOf, type LayerSetting } from '../two-curves/layer.ts';
import type { Pair } from '../two-curves/pair.ts';

/**
 * The pressure under a ball in a spherical socket as a formula, to draw isobars exactly.
 *
 * Seen from the socket's centre C, with the ball's centre B at a distance e from it, the ball's surface stands R + h off in
 * the direction α from the line CB where r² = (R + h)² + e² − 2 (R + h) e cos α. So pressure depends on α alone, and an
 * isobar is a circle about that line, cut by the rim.
 */
export interface PressureField {
  readonly curvatureRadius: number;
  readonly ballRadius: number;
  /** From C to B, mm. */
  readonly distance: number;
  /** Angle of the line CB from the centre line, rad. */
  readonly tilt: number;
  /** Bed modulus, N/mm³. */
  readonly bed: number;
  /** Half of the arc from rim to rim, rad. */
  readonly halfArc: number;
}

/** The field of a solved contact whose translation goes along x. */
export function fieldOf(
  { socket, ballRadius }: Pair,
  layer: LayerSetting,
  contact: CarriedContact,
): PressureField {
  const [x, , z] = contact.ballCentre;
  const fall = socket.curvatureRadius - z;
  return {
    curvatureRadius: socket.curvatureRadius,
    ballRadius,
    distance: Math.hypot(x, fall),
    tilt: Math.atan2(x, fall),
    bed: foundationModulus(layerOf(layer)),
    halfArc: socket.halfArc,
  };
}

/** Pressure (MPa) at α (rad) from the line of centres; 0 where nothing is pressed. Knows of no rim. */
export function pressureAt(field: PressureField, alpha: number): number {
  const { curvatureRadius, ballRadius, distance, bed } = field;
  const across = distance * Math.sin(alpha);
  const penetration =
    Math.sqrt(ballRadius ** 2 - across ** 2) + distance * Math.cos(alpha) - curvatureRadius;
  return bed * Math.max(0, penetration);
}

/** Angle (rad) from the line of centres at which the pressure has fallen to `pressure` (MPa); 0 where it is never as high. */
export function angleOf(field: PressureField, pressure: number): number {
  const { curvatureRadius, ballRadius, distance, bed } = field;
  const reach = curvatureRadius + pressure / bed;
  const cosine = (reach ** 2 + distance ** 2 - ballRadius ** 2) / (2 * reach * distance);
  return Math.acos(Math.max(-1, Math.min(1, cosine)));
}

/** Pressure (MPa) on the line of the translation, `x` mm from the middle; null beyond the rim. */
export function pressureOnLine(field: PressureField, x: number): number | null {
  const angle = Math.asin(Math.max(-1, Math.min(1, x / field.curvatureRadius)));
  if (Math.abs(angle) > field.halfArc * (1 + 1e-9)) return null;
  return pressureAt(field, Math.abs(angle - field.tilt));
}

/** Where the pressure is highest, mm from the middle: on the line of centres, or at the rim where that passes beyond it. */
export function peakPlace({ curvatureRadius, tilt, halfArc }: PressureField): number {
  return curvatureRadius * Math.sin(Math.min(tilt, halfArc));
}

/** Round pressures (MPa) under a peak, equally far apart, from the first step up: seven at most. */
export function isobarLevels(peak: number): readonly number[] {
  const decade = 10 ** Math.floor(Math.log10(peak / 4));
  const step =
    [5, 2.5, 2, 1].map((factor) => factor * decade).find((size) => peak / size >= 4) ?? decade;
  const count = Math.ceil(peak / step - 1e-9) - 1;
  return Array.from({ length: count }, (_, i) => Number(((i + 1) * step).toPrecision(6)));
}
