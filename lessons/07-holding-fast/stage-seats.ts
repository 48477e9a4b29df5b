import { stageLoad } from '../../sims/benches/peg-board/acts.ts';
import { seatOf, type Seat } from '../../sims/benches/peg-board/seat.ts';
import type { Design } from '../../sims/benches/peg-board/settings.ts';
import { standOf, type Stand } from '../../sims/benches/peg-board/stand.ts';
import { holds, type HoldKind } from '../../sims/mechanics/index.ts';
import { factEntry, factValue } from '../fact-value.ts';
import {
  FAR,
  ground,
  hardestPull,
  NEAR,
  newPeg,
  pegAt,
  preset,
  sidesOfPeg,
  usual,
} from './seats.ts';

/*
 * What the lecture lays out and draws. One peg is that of the others, so that only places differ.
 */

/** Two pegs at a distance from each other, mm, one in front and one behind. */
const pairApart = (spacing: number): Design => ({
  pegs: [pegAt(spacing / 2, 0), pegAt(-spacing / 2, 0)],
  keel: null,
});

export const one: Design = { pegs: [pegAt(0, 0)], keel: null };
export const line = preset('line');
export const triangle = preset('far');
export const keel = preset('keel');
export const fluted = preset('fluted');
/** The two in line, turned by a quarter: they stand as far from each other as before. */
export const turned = pairApart(FAR);

/** A layout on the board’s bone, under the board’s load in front. */
export interface Seated {
  readonly design: Design;
  readonly seat: Seat;
  readonly stand: Stand;
  /** N, of the hold that is pulled hardest */
  readonly hardest: number;
}

function seatedInFront(design: Design): Seated {
  const seat = seatOf(design, ground);
  const stand = standOf(seat, stageLoad);
  return { design, seat, stand, hardest: hardestPull(stand) };
}

export const oneSeated = seatedInFront(one);
export const lineSeated = seatedInFront(line);
export const turnedSeated = seatedInFront(turned);

/** Share of the lift-off in front that the line leaves of the single peg’s, and the turned pair of the line’s. */
export const leftByLine = lineSeated.stand.liftOff / oneSeated.stand.liftOff;
export const leftByTurning = turnedSeated.stand.liftOff / lineSeated.stand.liftOff;

/** Lift-off of a pair, mm, by its distance from front to back; and by the square of that alone, from the near pair on. */
export const liftOfPair = (spacing: number): number =>
  seatedInFront(pairApart(spacing)).stand.liftOff;
export const nearLift = liftOfPair(NEAR);
export const farLift = turnedSeated.stand.liftOff;
export const liftBySquare = (spacing: number): number => nearLift * (NEAR / spacing) ** 2;

/** An outer peg of the fluted layout, the usual one, and a thick one: what their sides are worth at the usual strength. */
const THICK = { diameter: 7, length: 12 } as const;
const [, outer = newPeg] = fluted.pegs;
export const peeled = [outer, newPeg, THICK].map(({ diameter, length }) => ({
  diameter,
  length,
  pullOut: usual.strength * sidesOfPeg({ diameter, length }),
}));

/** The kinds of hold, the strongest first. */
const kindNames: readonly HoldKind[] = [
  'metal-backed screw-fixed',
  'textured cemented',
  'in-grown',
  'keel cemented',
  'smooth cemented',
  'fluted press-fit',
];
export const kinds = kindNames.map((name) => ({ name, ...holds[name] }));

/** How many stood in each arm of the trial, and in each group that was followed for years; and how many patients part these. */
const armOf = (fact: string): number => factEntry(fact).n ?? NaN;
export const trial = { keel: armOf('lucency-early-keel'), pegs: armOf('lucency-early-pegs') };
const each = armOf('loosening-risk-keel');
export const yearsOn = {
  each,
  apart: Math.round(
    (each * Math.abs(factValue('loosening-risk-pegs') - factValue('loosening-risk-keel'))) / 100,
  ),
};
