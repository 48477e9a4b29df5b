import { inRange, positive } from '../geometry/numeric.ts';

/** An elastic material, the same in every direction. */
export interface ElasticMaterial {
  /** E, above 0, in the unit of the other material’s */
  readonly youngsModulus: number;
  /** ν, 0 to 0.5 */
  readonly poissonRatio: number;
}

/** How far apart two joined materials are, in three numbers without a unit. */
export interface Dundurs {
  /** Step in stiffness, −1 to 1: 0 for equals, near 1 where the first is far stiffer. */
  readonly alpha: number;
  /** Step in what resists a change of volume, between (α − 1)/4 and (α + 1)/4 */
  readonly beta: number;
  /** Oscillation index of a crack along the joint, (1/2π) ln((1 − β)/(1 + β)) */
  readonly epsilon: number;
}

/**
 * Dundurs’ parameters of two materials bonded to each other, in plane strain.
 *
 * α = (Ē₁ − Ē₂)/(Ē₁ + Ē₂) with Ē = E/(1 − ν²), the same as [μ₁(κ₂ + 1) − μ₂(κ₁ + 1)]/[μ₁(κ₂ + 1) + μ₂(κ₁ + 1)], and
 * β = [μ₁(κ₂ − 1) − μ₂(κ₁ − 1)]/[μ₁(κ₂ + 1) + μ₂(κ₁ + 1)], with μ = E/2(1 + ν) and κ = 3 − 4ν. (A form of α with κ₁ and
 * κ₂ changed over goes about; it does not vanish for equal Ē.)
 *
 * @throws RangeError for a modulus that is not above 0 or ν outside 0 … 0.5
 *
 * Source: Dundurs 1969 (from memory); bounds of α and β: Schmauder and Meyer 1992 (abstract).
 */
export function dundurs(first: ElasticMaterial, second: ElasticMaterial): Dundurs {
  const largest = Math.max(first.youngsModulus, second.youngsModulus);
  const one = planeStrain('first', first, largest);
  const two = planeStrain('second', second, largest);
  const whole = one.shear * (two.kappa + 1) + two.shear * (one.kappa + 1);
  const step = (by: 1 | -1): number => one.shear * (two.kappa + by) - two.shear * (one.kappa + by);
  const beta = step(-1) / whole;
  return {
    alpha: step(1) / whole,
    beta,
    // + 0: not −0 for equals.
    epsilon: -Math.atanh(beta) / Math.PI + 0,
  };
}

/** Moduli in units of the larger one, so that no product leaves the numbers. */
function planeStrain(
  name: string,
  { youngsModulus, poissonRatio }: ElasticMaterial,
  largest: number,
): { readonly shear: number; readonly kappa: number } {
  positive(`${name}.youngsModulus`, youngsModulus, 'MPa');
  inRange(`${name}.poissonRatio`, poissonRatio, 0, 0.5, '');
  return {
    shear: youngsModulus / largest / (2 * (1 + poissonRatio)),
    kappa: 3 - 4 * poissonRatio,
  };
}
