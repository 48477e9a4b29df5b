import { inRange, positive } from '../geometry/numeric.ts';

/** A layer of a strip that is bent. */
export interface BentLayer {
  /** mm, above 0 */
  readonly thickness: number;
  /** Young’s modulus, MPa, above 0 */
  readonly modulus: number;
  /** mm, above 0 */
  readonly width: number;
}

export interface BilayerQuestion {
  /** The lower layer and the upper one, bonded. */
  readonly layers: readonly [BentLayer, BentLayer];
  /** N·mm; positive makes the strip sag, so that its lower face is pulled */
  readonly moment: number;
  /** Force across the strip, N; none where it is left out */
  readonly shearForce?: number | undefined;
}

/** Stress along the strip, MPa, pull positive. */
export interface LayerStress {
  readonly bottom: number;
  readonly top: number;
}

export interface BilayerBending {
  /** Height of the fibre that stays as long as it was above the lower face, mm */
  readonly neutralAxis: number;
  /** Moment for a curvature, Σ E I, N·mm² */
  readonly rigidity: number;
  /** 1/mm, with the sign of the moment */
  readonly curvature: number;
  /** The lower layer’s stresses and the upper one’s */
  readonly stresses: readonly [LayerStress, LayerStress];
  /** Shear in the joint between the layers, far from the ends, MPa, with the sign of the force across */
  readonly jointShear: number;
}

/**
 * Bending of a strip of two bonded layers by the transformed section: a plane section stays plane, each layer counts by
 * its modulus.
 *
 * Joint shear is V · E₂A₂(y₂ − y₀) / (b Σ E I), with b the narrower width.
 *
 * @throws RangeError for a length or modulus that is not above 0, a moment or force that is not finite
 *
 * Derivation: statics and Hooke’s law; in any book on the strength of materials.
 */
export function bilayerBending({
  layers,
  moment,
  shearForce = 0,
}: BilayerQuestion): BilayerBending {
  inRange('moment', moment, -Infinity, Infinity, 'N·mm');
  inRange('shearForce', shearForce, -Infinity, Infinity, 'N');
  layers.forEach(({ thickness, modulus, width }, i) => {
    positive(`layers[${i}].thickness`, thickness, 'mm');
    positive(`layers[${i}].modulus`, modulus, 'MPa');
    positive(`layers[${i}].width`, width, 'mm');
  });
  const [lower, upper] = layers;
  const joint = lower.thickness;
  const top = joint + upper.thickness;
  const [one, two] = [along(lower), along(upper)];
  const neutralAxis = (one * (joint / 2) + two * ((joint + top) / 2)) / (one + two);
  // Steiner’s two parts in one: both layers’ own stiffness, and the pair of them at their distance.
  const rigidity =
    (one * lower.thickness ** 2) / 12 +
    (two * upper.thickness ** 2) / 12 +
    (one * two * (top / 2) ** 2) / (one + two);
  const curvature = moment / rigidity;
  const stress = (modulus: number, height: number): number =>
    // + 0: not −0 where nothing is bent.
    modulus * curvature * (neutralAxis - height) + 0;
  return {
    neutralAxis,
    rigidity,
    curvature,
    stresses: [
      { bottom: stress(lower.modulus, 0), top: stress(lower.modulus, joint) },
      { bottom: stress(upper.modulus, joint), top: stress(upper.modulus, top) },
    ],
    jointShear:
      (shearForce * two * ((joint + top) / 2 - neutralAxis)) /
      (Math.min(lower.width, upper.width) * rigidity),
  };
}

/** E A, N */
function along({ thickness, modulus, width }: BentLayer): number {
  return modulus * thickness * width;
}
