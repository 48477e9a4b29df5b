import {
  bilayerBending,
  dundurs,
  materials,
  shearLag,
  type BilayerBending,
  type Dundurs,
  type ElasticMaterial,
  type MaterialName,
  type ShearLag,
} from '../../mechanics/index.ts';
import type { StripSetting } from './settings.ts';

/** Width of the strip, mm: about that of the lower part of a face. A teaching value. */
export const WIDTH = 26;
/** A rim that goes down by more than this share of the free half is beyond the theory of small bends. */
const MOST_BEND = 0.1;

/** What follows from a setting. */
export interface Strip {
  /** Of the upper layer on the lower one */
  readonly pair: Dundurs;
  /** Stiffer modulus over the softer one, 1 and up */
  readonly step: number;
  readonly shear: ShearLag;
  /** Greatest shear in the joint, MPa */
  readonly peakShear: number;
  /** The strip held over half of its length and pressed at the rim of the other half */
  readonly bending: BilayerBending;
  /** Length of the free half, mm */
  readonly arm: number;
  /** How far the rim goes down, mm */
  readonly deflection: number;
  /** Whether it bends so little that the theory of small bends may be believed */
  readonly isSmallBend: boolean;
}

export function stripOf(setting: StripSetting): Strip {
  const { upper, lower, upperThickness, lowerThickness, length, pull, press } = setting;
  const [above, below] = [elastic(upper), elastic(lower)];
  const moduli = [above.youngsModulus, below.youngsModulus] as const;
  const shear = shearLag({
    overlap: length,
    adherends: [
      { modulus: moduli[0], thickness: upperThickness },
      { modulus: moduli[1], thickness: lowerThickness },
    ],
    // A layer of modulus 1 MPa that gives as much as film and layers together.
    adhesive: { shearModulus: 1, thickness: shearGive(setting) },
    load: pull,
    width: WIDTH,
  });
  const arm = length / 2;
  const bending = bilayerBending({
    layers: [
      { thickness: lowerThickness, modulus: moduli[1], width: WIDTH },
      { thickness: upperThickness, modulus: moduli[0], width: WIDTH },
    ],
    moment: -press * arm,
    shearForce: press,
  });
  const deflection = (press * arm ** 3) / (3 * bending.rigidity);
  return {
    pair: dundurs(above, below),
    step: Math.max(...moduli) / Math.min(...moduli),
    shear,
    peakShear: shear.peakToMean * shear.mean,
    bending,
    arm,
    deflection,
    isSmallBend: deflection <= MOST_BEND * arm,
  };
}

/**
 * How far the two layers slide past each other for each MPa of shear in their joint, mm: the cement between them, t/G, and
 * a third of each layer, t/3G. The third follows from shear that falls evenly from the joint to the free face.
 */
export function shearGive({
  upper,
  lower,
  upperThickness,
  lowerThickness,
  film,
}: StripSetting): number {
  return (
    upperThickness / (3 * shearModulus(upper)) +
    lowerThickness / (3 * shearModulus(lower)) +
    film / shearModulus('bone cement')
  );
}

export function elastic(name: MaterialName): ElasticMaterial {
  const { youngsModulus, poissonRatio } = materials[name];
  return { youngsModulus: youngsModulus.value, poissonRatio: poissonRatio.value };
}

function shearModulus(name: MaterialName): number {
  const { youngsModulus, poissonRatio } = elastic(name);
  return youngsModulus / (2 * (1 + poissonRatio));
}

/** Height of the pressed half’s axis at x mm from where it is held, mm, 0 and down. */
export function sagAt({ arm, deflection }: Strip, x: number): number {
  if (x <= 0) return 0;
  return (-deflection * x ** 2 * (3 * arm - x)) / (2 * arm ** 3);
}

/** Shear at a place along the joint, MPa, between the places that are computed. */
export function shearAt({ shear }: ShearLag, position: number): number {
  const after = shear.findIndex((place) => place.position >= position);
  const next = shear[after] ?? shear.at(-1);
  const before = shear[after - 1] ?? next;
  if (next === undefined || before === undefined) return 0;
  const room = next.position - before.position;
  if (room <= 0) return next.stress;
  return before.stress + ((position - before.position) / room) * (next.stress - before.stress);
}
