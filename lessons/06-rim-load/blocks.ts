import { seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import { factValue } from '../fact-value.ts';
import { bentBack, stiffBack, type Plank } from './bending.ts';
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
