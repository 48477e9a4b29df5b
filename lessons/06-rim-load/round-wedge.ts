import { inRange } from '../../sims/geometry/numeric.ts';

/** How a round or an elliptical back carries a load on one of its axes. */
export interface RoundWedge {
  /** Share of the diameter that is in contact, 0 to 1 */
  readonly contactShare: number;
  /** Pressure at the loaded edge, in multiples of the load over the whole area */
  readonly peakShare: number;
}

/**
 * The wedge under a round back that can only be pressed.
 *
 * Up to a quarter of the radius from the middle everything touches. Beyond it a segment does, whose half-angle makes the
 * moments balance. An ellipse under a load on one of its axes is a circle drawn out, and has the same shares.
 *
 * @param eccentricity of the load, as a share of the radius, 0 to less than 1
 * @throws RangeError for an eccentricity out of range
 *
 * Derivation: volume and moment of a cylinder cut by a plane; handbook of foundations (from memory).
 */
export function roundWedge(eccentricity: number): RoundWedge {
  inRange('eccentricity', eccentricity, 0, 0.999, '');
  if (eccentricity <= 1 / 4) return { contactShare: 1, peakShare: 1 + 4 * eccentricity };
  let [low, high] = [1e-3, Math.PI];
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    const { volume, moment } = segment(middle);
    // The smaller the segment, the further out its resultant stands.
    if (moment / volume > eccentricity) low = middle;
    else high = middle;
  }
  const angle = (low + high) / 2;
  const depth = 1 - Math.cos(angle);
  return { contactShare: depth / 2, peakShare: (Math.PI * depth) / segment(angle).volume };
}

/** Of the wedge over a segment of the unit circle, half-angle `angle`, under a plane that rises by 1 for each 1. */
function segment(angle: number): { readonly volume: number; readonly moment: number } {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return {
    volume: (2 / 3) * sin ** 3 - cos * (angle - sin * cos),
    moment: angle / 4 - Math.sin(4 * angle) / 16 - (2 / 3) * cos * sin ** 3,
  };
}
