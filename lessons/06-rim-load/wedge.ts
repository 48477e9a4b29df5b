import { positive, inRange } from '../../sims/geometry/numeric.ts';

/** A rectangular back on a bed that can only be pressed, looked at from the side. */
export interface Block {
  /** Along the way the load moves, mm */
  readonly length: number;
  /** Across it, mm */
  readonly width: number;
  /** Pressure for each mm pressed in, N/mm³ */
  readonly bed: number;
}

/** Something that pulls the block down. */
export interface Peg {
  /** From the loaded edge, mm */
  readonly at: number;
  /** N/mm */
  readonly stiffness: number;
}

/** How the bed carries a load: a wedge of pressure, highest at the loaded edge. */
export interface Wedge {
  /** How much of the length is in contact, from the loaded edge, mm */
  readonly contact: number;
  /** Pressure at the loaded edge and at the far one, N/mm² */
  readonly peak: number;
  readonly far: number;
  /** rad */
  readonly tilt: number;
  /** Of the far edge off the bed, and of the loaded edge into it, mm */
  readonly lift: number;
  readonly pressIn: number;
  /** Of the peg, N; 0 without one */
  readonly pull: number;
}

/**
 * The wedge under a rectangular block.
 *
 * The pressure falls in a straight line from the loaded edge, and its resultant stands under the load. Up to a sixth of
 * the length from the middle the line reaches the far edge. Beyond it the wedge is a triangle three times as long as the
 * load is far from the loaded edge.
 *
 * @param load N, above 0
 * @param eccentricity of the load from the middle, mm, 0 to less than half the length
 * @throws RangeError for a load or an eccentricity out of range
 *
 * Derivation: balance of forces and moments; handbook of foundations (from memory).
 */
export function wedgeUnder(block: Block, load: number, eccentricity: number): Wedge {
  const { length, width, bed } = checked(block, load);
  const half = length / 2;
  if (!(eccentricity >= 0 && eccentricity < half)) {
    throw new RangeError(`eccentricity is ${eccentricity}; allowed: 0 to less than ${half} mm`);
  }
  const mean = load / (length * width);
  if (eccentricity <= length / 6) {
    const lean = (6 * eccentricity) / length;
    const [peak, far] = [mean * (1 + lean), mean * (1 - lean)];
    const tilt = (peak - far) / (bed * length);
    return { contact: length, peak, far, tilt, lift: 0, pressIn: peak / bed, pull: 0 };
  }
  const contact = 3 * (half - eccentricity);
  const peak = (2 * load) / (contact * width);
  return { contact, peak, far: 0, ...turned(block, contact, peak), pull: 0 };
}

/**
 * The wedge under the same block with one peg, beyond the contact, that answers a pull in proportion. The contact’s length
 * makes the moments balance; it is found by halving.
 *
 * @throws RangeError for a load or block out of range, a peg off the block, or a load so near the middle that the peg is
 *   not pulled or the far edge not lifted: there this formula is none
 */
export function wedgeWithPeg(block: Block, load: number, eccentricity: number, peg: Peg): Wedge {
  const { length, width, bed } = checked(block, load);
  const { at, stiffness } = peg;
  inRange('peg.at', at, 0, length, 'mm');
  positive('peg.stiffness', stiffness, 'N/mm');
  const fromEdge = length / 2 - eccentricity;
  const carried = (contact: number): number =>
    (bed * width * contact ** 2) / 2 - stiffness * (at - contact);
  const unbalanced = (contact: number): number =>
    fromEdge * carried(contact) -
    ((bed * width * contact ** 3) / 6 - stiffness * at * (at - contact));
  let [low, high] = [leastContact(peg, bed * width), at];
  if (!(unbalanced(low) * unbalanced(high) < 0)) {
    throw new RangeError(
      `eccentricity is ${eccentricity}; allowed: where the far edge lifts and the peg is pulled`,
    );
  }
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (unbalanced(low) * unbalanced(middle) <= 0) high = middle;
    else low = middle;
  }
  const contact = (low + high) / 2;
  const tilt = load / carried(contact);
  const pull = stiffness * tilt * (at - contact);
  return {
    contact,
    peak: bed * tilt * contact,
    far: 0,
    ...turned(block, contact, bed * tilt * contact),
    pull,
  };
}

/** Below this contact the bed carries less than the peg pulls, and nothing is left for the load. */
function leastContact({ at, stiffness }: Peg, perLength: number): number {
  return (-stiffness + Math.sqrt(stiffness ** 2 + 2 * perLength * stiffness * at)) / perLength;
}

function checked(block: Block, load: number): Block {
  positive('length', block.length, 'mm');
  positive('width', block.width, 'mm');
  positive('bed', block.bed, 'N/mm³');
  positive('load', load, 'N');
  return block;
}

function turned({ length, bed }: Block, contact: number, peak: number) {
  const tilt = peak / (bed * contact);
  return { tilt, lift: tilt * (length - contact), pressIn: peak / bed };
}
