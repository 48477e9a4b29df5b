import {
  bilayerBending,
  boneOf,
  foundationModulus,
  type BilayerBending,
} from '../../sims/mechanics/index.ts';
import { bentBack, type Plank, type Risen } from '../../sims/mechanics/plank-on-bed.ts';
import { metalBack, modulusOf, WIDTH } from './layers.ts';

/*
 * A load near the rim on a back that bends: plastic alone, and plastic on a metal plate of the same thickness in all.
 * Sizes and load are teaching values.
 */

export const PRESS = 500;
/** Of the bone that bears, mm */
const LAYER = 10;
export const { length, upperThickness, lowerThickness } = metalBack.setting;
export const thickness = upperThickness + lowerThickness;
/** Where the load stands, mm from the middle: in it, and near the rim. */
export const MIDDLE = 0;
export const RIM = (3 / 8) * length;

/** N/mm³: a layer of bone that cannot spread sideways, as the benches take it. */
export function bedOf(): number {
  const { modulus, poisson } = boneOf('bone, across the face');
  return foundationModulus({ thickness: LAYER, modulus, poisson });
}

export interface Back {
  readonly name: string;
  /** Of the load, mm from the middle */
  readonly place: number;
  readonly isBacked: boolean;
  readonly bending: BilayerBending;
  readonly risen: readonly Risen[];
  /** Highest pressure on the bone, MPa */
  readonly peak: number;
  /** At the edge that is loaded least, MPa */
  readonly far: number;
  /** Pressure on the bone at each place, MPa; below 0 where it is pulled */
  readonly pressure: readonly { readonly at: number; readonly pressure: number }[];
}

function backOf(lower: 'polyethylene' | 'titanium alloy', place: number): Back {
  const isBacked = lower !== 'polyethylene';
  const bending = bilayerBending({
    layers: [
      { thickness: lowerThickness, modulus: modulusOf(lower), width: WIDTH },
      { thickness: upperThickness, modulus: modulusOf('polyethylene'), width: WIDTH },
    ],
    moment: 0,
    shearForce: PRESS,
  });
  const plank: Plank = {
    length,
    width: WIDTH,
    thickness,
    // One material that bends as the two together do.
    modulus: (12 * bending.rigidity) / (WIDTH * thickness ** 3),
    bed: bedOf(),
  };
  const risen = bentBack(plank, PRESS, place);
  const pressure = risen.map(({ at, rise }) => ({ at, pressure: -rise * plank.bed }));
  return {
    name: isBacked ? 'plastic on metal' : 'plastic alone',
    place,
    isBacked,
    bending,
    risen,
    pressure,
    peak: Math.max(...pressure.map((each) => each.pressure)),
    far: pressure[0]?.pressure ?? NaN,
  };
}

export const plain = { middle: backOf('polyethylene', MIDDLE), rim: backOf('polyethylene', RIM) };
export const backed = {
  middle: backOf('titanium alloy', MIDDLE),
  rim: backOf('titanium alloy', RIM),
};
/** As the figure has them. */
export const backs: readonly Back[] = [plain.middle, backed.middle, plain.rim, backed.rim];
/** How many times stiffer the one bends than the other. */
export const stiffer = backed.rim.bending.rigidity / plain.rim.bending.rigidity;
/** Shear in the joint far from its ends, over that in plastic alone at the same height. */
export const jointShare = backed.rim.bending.jointShear / plain.rim.bending.jointShear;
