import {
  contactPressure,
  foundationModulus,
  hertzContact,
  leastThinLayer,
  type CarriedContact,
  type HertzContact,
} from '../../sims/mechanics/index.ts';
import type { Pair } from '../../sims/benches/two-curves/pair.ts';
import { factValue } from '../fact-value.ts';
import { closeFit, closePair, looseFit, loosePair, pairOf } from './cups.ts';

/** N, through the joint. */
export const load = factValue('contact-load');

/** The lesson's plastic. */
export const layer = {
  thickness: factValue('drawn-component-thickness'),
  modulus: factValue('polyethylene-modulus'),
  poisson: factValue('polyethylene-poisson'),
} as const;

/** Where the ball is slid to in the second prediction, mm. */
export const slid = 2;

/** The map of a pair on the lesson's plastic under its load. */
export function pressed({ socket, ballRadius }: Pair, translation = 0): CarriedContact {
  const contact = contactPressure({
    ...{ socket, ballRadius, translation, compressiveLoad: load },
    ...layer,
  });
  if (contact.state === 'too much for the layer') {
    throw new RangeError(`load is ${load}; allowed: up to ${contact.greatestLoad} N`);
  }
  return contact;
}

/** The two closed forms for a pair, on plastic of a thickness, mm. */
export function closedForms({ socket, ballRadius }: Pair, thickness = layer.thickness) {
  return hertzContact({
    ...layer,
    ...{ ballRadius, socketRadius: socket.curvatureRadius, load, thickness },
  });
}

/** 1/Re = 1/r − 1/R, per mm. */
export const sharpness = ({ socket, ballRadius }: Pair): number =>
  1 / ballRadius - 1 / socket.curvatureRadius;

/** A pair centred: the map, Hertz and the thin layer. */
export interface Centred {
  readonly mismatch: number;
  readonly pair: Pair;
  readonly map: CarriedContact;
  readonly hertz: NonNullable<HertzContact['hertz']>;
  readonly thinLayer: NonNullable<HertzContact['thinLayer']>;
  readonly domain: HertzContact['domain'];
}

export function centred(mismatch: number): Centred {
  const pair = pairOf(mismatch);
  const { hertz, thinLayer, domain } = closedForms(pair);
  if (hertz === null || thinLayer === null) {
    throw new RangeError(`mismatch is ${mismatch}; allowed: above 0 mm`);
  }
  return { mismatch, pair, map: pressed(pair), hertz, thinLayer, domain };
}

/** Which pair presses harder once both balls are slid to the side, by the map. */
export const harderSlid: 'close' | 'same' | 'loose' = (() => {
  const change = pressed(closePair, slid).peakPressure / pressed(loosePair, slid).peakPressure - 1;
  if (Math.abs(change) < 0.01) return 'same';
  return change > 0 ? 'close' : 'loose';
})();

/** How much sharper the loose pair is curved against each other than the close one, as a factor. */
export const sharper = sharpness(pairOf(looseFit)) / sharpness(pairOf(closeFit));

/** Thickness (mm) from which `holds` no longer changes, by halving; it is false at `no` and true at `yes`. */
function thicknessWhere(no: number, yes: number, holds: (thickness: number) => boolean): number {
  let [outside, inside] = [no, yes];
  for (let i = 0; i < 40; i += 1) {
    const middle = (outside + inside) / 2;
    if (holds(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}

/** Least thickness of plastic on which Hertz holds within a tenth for a mismatch, mm. */
export const hertzFrom = (mismatch: number): number =>
  thicknessWhere(0.01, 100, (t) => closedForms(pairOf(mismatch), t).domain.isHalfSpace);

/** Greatest thickness of plastic on which the thin layer holds within a tenth for a mismatch, mm. */
export const thinLayerUpTo = (mismatch: number): number =>
  thicknessWhere(100, 0.01, (t) => closedForms(pairOf(mismatch), t).domain.isThinLayer);

/** Patch radius over thickness the thin layer asks for, with the lesson's plastic. */
export const thinLayerAsks = leastThinLayer(layer.poisson);

/** A Poisson's ratio near the lesson's, and how many times stiffer the bed is at the lesson's. */
export const lessPoisson = 0.4;
export const stifferBed =
  foundationModulus(layer) / foundationModulus({ ...layer, poisson: lessPoisson });

/** Patch radius over thickness up to which Hertz holds, found where it leaves off. */
export const hertzAsks = (() => {
  const thickness = hertzFrom(closeFit);
  return closedForms(pairOf(closeFit), thickness).domain.patchToThickness ?? 0;
})();
