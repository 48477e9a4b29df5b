import { seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import { factValue } from '../fact-value.ts';
import { fixedText, mm, newtons } from '../../sims/shared/format.ts';
import { small } from '../../sims/benches/rocking-bench/lettering.ts';
import { bentBack, stiffBack, type Plank, type Risen } from '../../sims/mechanics/plank-on-bed.ts';
import { roundWedge, type RoundWedge } from './round-wedge.ts';
import {
  bare,
  height,
  kern,
  kernOfRectangle,
  onePeg,
  opening,
  press,
  thickness,
  width,
} from './seats.ts';
import { wedgeUnder, wedgeWithPeg, type Block, type Peg, type Wedge } from './wedge.ts';

/**
 * A rectangular block as high as the bench’s back and of its area, on the same bone: for drawings and formulas, since a
 * wedge under it can be drawn from the side as it is.
 */
export const block: Block = { length: height, width: (Math.PI / 4) * width, bed: bedOf() };
/** The bench’s middle peg, moved so far from the middle to the side that lifts. */
export const PEG_AWAY = 10;
export const peg: Peg = { at: height / 2 + PEG_AWAY, stiffness: pegStiffness() };

/** N/mm³ */
function bedOf(): number {
  const sum = seatOf(opening, bare).elements.reduce((all, one) => all + one.normalStiffness, 0);
  return sum / ((Math.PI / 4) * width * height);
}

/** N/mm along its axis */
function pegStiffness(): number {
  const found = seatOf(opening, onePeg).elements.find(({ tension }) => tension === 'limited');
  if (found === undefined) throw new Error('the lesson’s peg holds by nothing');
  return found.normalStiffness;
}

/** Where the load stands on the block that is drawn with and without its peg, mm from the middle. */
export const PEG_FOOT = 14;
export const pegged: Wedge = wedgeWithPeg(block, press, PEG_FOOT, peg);

/** One eccentricity under both shapes of back. */
export interface ShapeRow {
  /** mm from the middle */
  readonly foot: number;
  readonly rectangle: Wedge & { readonly peakShare: number };
  readonly round: RoundWedge;
}

/** The wedge under the block, its peak also in multiples of press over area. */
export function wedgeAt(foot: number, load = press): ShapeRow['rectangle'] {
  const wedge = wedgeUnder(block, load, foot);
  return { ...wedge, peakShare: (wedge.peak * block.length * block.width) / load };
}

export const shapeRows: readonly ShapeRow[] = [0, kern, kernOfRectangle, 9, 12, 15].map((foot) => ({
  foot,
  rectangle: wedgeAt(foot),
  round: roundWedge(foot / (height / 2)),
}));

/** The block as a back of polyethylene, bonded to its bed. */
export const plank: Plank = { ...block, thickness, modulus: factValue('polyethylene-modulus') };
export const BEND_FOOT = 12;
export const bent = bentBack(plank, press, BEND_FOOT);
export const stiff = stiffBack(plank, press, BEND_FOOT);
export const bentFar = bent[0]?.rise ?? 0;
export const stiffFar = stiff[0]?.rise ?? 0;
/** Where the bent back pulls its bond hardest. */
export const bentMost = bent.reduce((most, one) => (one.rise > most.rise ? one : most));

/** How a block lies, for a drawing. */
export interface Laid {
  readonly back: readonly Risen[];
  /** Highest pressure, N/mm² */
  readonly peak: number;
  /** Whether the bed answers a pull as well */
  readonly isBonded: boolean;
  /** Length in contact, mm, where not all of it is */
  readonly contact?: number;
  /** What the far edge does, in a word or two; '' where nothing is said of it */
  readonly far: string;
  /** Of a peg, N */
  readonly pull: number;
  /** For whoever does not see it */
  readonly words: string;
}

/** A wedge as a block that lies on it. */
export function laidOf({ contact, tilt, peak, pressIn, lift, pull }: Wedge): Laid {
  const half = block.length / 2;
  const rise = (at: number): number => tilt * (half - at) - pressIn;
  const places = lift > 0 ? [-half, half - contact, half] : [-half, half];
  const back = places.map((at) => ({ at, rise: rise(at) }));
  const held = pull > 0 ? ` The peg is pulled with ${newtons(pull)}.` : '';
  if (lift === 0)
    return {
      back,
      peak,
      isBonded: false,
      far: '',
      pull,
      words: `Everything is in contact.${held}`,
    };
  const words = `${mm(contact)} of ${mm(block.length)} are in contact, and the far edge has lifted ${small(lift)}.${held}`;
  return { back, peak, isBonded: false, contact, far: `gap ${small(lift)}`, pull, words };
}

/** A bonded back, stiff or bending. */
export function laidBonded(back: readonly Risen[]): Laid {
  const far = back[0]?.rise ?? 0;
  const peak = Math.max(...back.map(({ rise }) => -rise * block.bed));
  const size = `${fixedText(Math.abs(far) * 1000, 1)}\u00a0µm`;
  const word = `${far > 0 ? 'lifted' : 'pressed in'} ${size}`;
  return { back, peak, isBonded: true, far: word, pull: 0, words: `The far edge is ${word}.` };
}
