import { inRange, positive } from '../geometry/numeric.ts';

/** Two strips bonded along their faces, of which one would rather be longer. */
export interface BimetalQuestion {
  /** mm, above 0 */
  readonly thicknesses: readonly [number, number];
  /** Young’s moduli, MPa, above 0 */
  readonly moduli: readonly [number, number];
  /** By how much the second strip, alone, would be longer than the first, as a share: (α₂ − α₁)ΔT for heat */
  readonly mismatchStrain: number;
}

/**
 * Curvature of a strip of two layers that would rather be of different lengths, 1/mm. Positive with the second, longer
 * strip on the outside; the sign follows that of the mismatch.
 *
 * κ = 6 Δε (1 + m)² / (h [3(1 + m)² + (1 + mn)(m² + 1/mn)]), m = t₁/t₂, n = E₁/E₂, h = t₁ + t₂, written without quotients
 * of the two layers so that neither may vanish beside the other.
 *
 * @throws RangeError for a thickness or modulus that is not above 0, or a mismatch that is not finite
 *
 * Source: Timoshenko 1925, Analysis of bi-metal thermostats (from memory); each layer a beam free to narrow.
 */
export function bimetalCurvature({ thicknesses, moduli, mismatchStrain }: BimetalQuestion): number {
  thicknesses.forEach((thickness, i) => positive(`thicknesses[${i}]`, thickness, 'mm'));
  moduli.forEach((modulus, i) => positive(`moduli[${i}]`, modulus, 'MPa'));
  inRange('mismatchStrain', mismatchStrain, -Infinity, Infinity, '');
  const height = thicknesses[0] + thicknesses[1];
  const stiffest = Math.max(...moduli);
  // In units of the whole thickness and of the stiffer layer.
  const [a, b] = [thicknesses[0] / height, thicknesses[1] / height];
  const [first, second] = [moduli[0] / stiffest, moduli[1] / stiffest];
  const both = first * second * a * b;
  const stiffness =
    (first * a * a) ** 2 + (second * b * b) ** 2 + both * (4 * a * a + 6 * a * b + 4 * b * b);
  return ((6 * both) / stiffness) * (mismatchStrain / height);
}
