import { fixedText, mm } from '../../shared/format.ts';
import type { Grade, Requirement, Settable } from '../../shared/settable.ts';
import { bearingName } from '../round-the-rim/bearing.ts';
import { placeText, small } from './lettering.ts';
import {
  designOf,
  readPlaces,
  wallOf,
  writePlaces,
  type PegPlaces,
  type PegTask,
} from './question-task.ts';
import { DIRECTIONS } from './rose.ts';
import { seatOf, type Seat } from './seat.ts';
import type { BallLoad } from './settings.ts';
import { isRest, standOf, type Stand } from './stand.ts';

/** A layout under the load at each of its places round the rim. */
export interface Round {
  readonly seat: Seat;
  readonly turns: readonly { readonly load: BallLoad; readonly stand: Stand }[];
  /** Where it is worst: no rest, or else the greatest lift-off */
  readonly worst: { readonly load: BallLoad; readonly stand: Stand };
}

/** What is measured of a layout. */
export interface Measured {
  readonly round: Round;
  /** The least margin, of which peg, and with the load at which bearing; of those that come to rest */
  readonly pulled: { readonly margin: number; readonly peg: number; readonly bearing: number };
  /** The least bone beside a peg, mm, and of which peg */
  readonly outmost: { readonly wall: number; readonly peg: number };
  /** The least breadth of the pegs’ middles, mm: 0 where all stand on one line */
  readonly breadth: number;
}

export function roundOf(task: PegTask, places: PegPlaces): Round {
  const seat = seatOf(designOf(task, places), task.ground);
  const turns = Array.from({ length: DIRECTIONS }, (_, i) => {
    const load = { ...task.load, bearing: (360 / DIRECTIONS) * i };
    return { load, stand: standOf(seat, load) };
  });
  const badness = ({ stand }: Round['worst']): number => (isRest(stand) ? stand.liftOff : Infinity);
  const worst = turns.reduce((most, each) => (badness(each) > badness(most) ? each : most));
  return { seat, turns, worst };
}

export function measure(task: PegTask, places: PegPlaces): Measured {
  const round = roundOf(task, places);
  const margins = round.turns
    .filter(({ stand }) => isRest(stand))
    .flatMap(({ load: { bearing }, stand }) =>
      stand.pegs.map(({ margin }, peg) => ({ margin, peg, bearing })),
    );
  const walls = designOf(task, places).pegs.map((at, peg) => ({
    wall: wallOf(task.ground, at),
    peg,
  }));
  return {
    round,
    pulled: margins.reduce((least, each) => (each.margin < least.margin ? each : least), {
      margin: Infinity,
      peg: 0,
      bearing: 0,
    }),
    outmost: walls.reduce((least, each) => (each.wall < least.wall ? each : least)),
    breadth: breadthOf(places),
  };
}

/** Pegs within so many mm of one line count as standing on it. */
const ONE_LINE = 3;
/** Judged as it is written: a wall of 2.97 mm reads 3.0 and counts as that. */
const asWritten = (value: number, digits: number): number => Number(value.toFixed(digits));

/** What came of a layout: each requirement with what was computed, and the known outcomes that it shows. */
export function gradeLayout(task: PegTask, places: PegPlaces): Grade {
  const found = measure(task, places);
  const requirements = [liftOf(task, found), marginOf(task, found), wallRequirement(task, found)];
  const isMet = requirements.every((each) => each.isMet);
  return { isMet, requirements, outcomes: outcomesOf(requirements, found) };
}

function liftOf({ limits }: PegTask, { round }: Measured): Requirement {
  const { stand, load } = round.worst;
  const where = `with the load ${bearingName(load.bearing)}`;
  const rests = isRest(stand);
  return {
    id: 'lift',
    asks: `At most ${small(limits.lift)} of lift-off, wherever on the rim the load is`,
    found: rests ? `${small(stand.liftOff)}, ${where}` : `no rest ${where}`,
    isMet: rests && asWritten(stand.liftOff, 3) <= limits.lift,
  };
}

function marginOf({ limits }: PegTask, { pulled, round }: Measured): Requirement {
  const { margin, peg, bearing } = pulled;
  const isPulled = Number.isFinite(margin);
  return {
    id: 'margin',
    asks: `A margin of at least ${fixedText(limits.margin, 2)} at every peg`,
    found: isPulled
      ? `${fixedText(margin, 2)}, at peg ${peg + 1} with the load ${bearingName(bearing)}`
      : 'no peg is pulled',
    isMet: isRest(round.worst.stand) && asWritten(margin, 2) >= limits.margin,
  };
}

function wallRequirement({ limits }: PegTask, { outmost: { wall, peg } }: Measured): Requirement {
  return {
    id: 'wall',
    asks: `At least ${mm(limits.wall)} of bone between every peg and the edge`,
    found: `${mm(wall, 1)}, at peg ${peg + 1}`,
    isMet: asWritten(wall, 1) >= limits.wall,
  };
}

function outcomesOf(
  requirements: readonly Requirement[],
  { round: { worst }, breadth }: Measured,
): readonly string[] {
  const fails = (id: string): boolean => requirements.some((each) => each.id === id && !each.isMet);
  const liftOutcome = (): string => {
    if (breadth < ONE_LINE) return 'one-line';
    // The side that lifts says which way the pegs stand too near.
    const isAcross = Math.abs(Math.cos((worst.load.bearing * Math.PI) / 180)) > Math.SQRT1_2;
    return isAcross ? 'near-across' : 'near-along';
  };
  return [
    ...(fails('lift') ? [liftOutcome()] : []),
    ...(fails('margin') ? ['pulled'] : []),
    ...(fails('wall') ? ['outside'] : []),
  ];
}

/** The narrowest strip that takes in all places, mm. */
export function breadthOf(places: PegPlaces): number {
  const STEPS = 180;
  const spans = Array.from({ length: STEPS }, (_, i) => {
    const turn = (Math.PI * i) / STEPS;
    const along = places.map(({ x, y }) => x * Math.cos(turn) + y * Math.sin(turn));
    return Math.max(...along) - Math.min(...along);
  });
  return Math.min(...spans);
}

/** Peg Board as a question has it set. */
export const settablePegs: Settable<PegTask, PegPlaces> = {
  outcomes: ['one-line', 'near-across', 'near-along', 'pulled', 'outside'],
  start: ({ start }) => start,
  way: ({ way }) => way,
  write: writePlaces,
  read: readPlaces,
  grade: gradeLayout,
  words: (_, places) =>
    places.map((place, i) => `Peg ${i + 1} stands ${placeText(place)}.`).join(' '),
};
