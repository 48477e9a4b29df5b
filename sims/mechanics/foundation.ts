import { inRange, positive } from '../geometry/numeric.ts';

/** A layer of plastic on a backing that does not give. */
export interface ElasticLayer {
  /** mm, above 0 */
  readonly thickness: number;
  /** Young's modulus E, MPa, above 0 */
  readonly modulus: number;
  /** Poisson's ratio ν, 0 to {@link GREATEST_POISSON} */
  readonly poisson: number;
}

/**
 * The largest Poisson's ratio taken. At one half the layer cannot change its volume, a bed of springs that do not know
 * of each other would be infinitely stiff, and it stops being a model of anything.
 */
export const GREATEST_POISSON = 0.499;

/**
 * Bed modulus of an elastic foundation: pressure for each millimetre of penetration,
 * k = E(1 − ν) / ((1 + ν)(1 − 2ν) t), N/mm³.
 *
 * The layer is squeezed through its thickness and cannot escape sideways, so that its confined modulus counts.
 *
 * @throws RangeError for a thickness or modulus that is not a finite number above 0, or ν outside 0 … 0.499
 *
 * Source: the elastic foundation model of Johnson, Contact Mechanics, ch. 4 (from memory); the confined modulus follows
 * from Hooke's law with both side strains zero.
 */
export function foundationModulus({ thickness, modulus, poisson }: ElasticLayer): number {
  positive('thickness', thickness, 'mm');
  positive('modulus', modulus, 'MPa');
  inRange('poisson', poisson, 0, GREATEST_POISSON, '');
  const confined = (modulus * (1 - poisson)) / ((1 + poisson) * (1 - 2 * poisson));
  return confined / thickness;
}
