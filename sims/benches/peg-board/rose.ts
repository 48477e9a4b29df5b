import type { SeatOutcome } from '../../mechanics/index.ts';
import type { InPieces } from '../../shared/beside.ts';
import { seatOf, type Seat } from './seat.ts';
import type { BallLoad, Design, Ground } from './settings.ts';
import { standOf } from './stand.ts';

export const DIRECTIONS = 24;

/** The same load carried to one place round the rim. */
export interface RoseRow {
  /** Degrees from the front toward the top */
  readonly bearing: number;
  readonly outcome: SeatOutcome;
  /** mm; NaN unless the socket comes to rest */
  readonly liftOff: number;
  /** Least margin of all that holds; Infinity where nothing is pulled */
  readonly margin: number;
}

/** All that a rose follows from. */
export interface RoseQuestion extends Omit<BallLoad, 'bearing'> {
  readonly design: Design;
  readonly ground: Ground;
  /** Elements of the bed, about */
  readonly count: number;
}

/** Lift-off with the load carried round the face at its share of the way to the rim. */
export function liftRose(seat: Seat, load: Omit<BallLoad, 'bearing'>): readonly RoseRow[] {
  return Array.from({ length: DIRECTIONS }, (_, i) => roseRow(seat, load, i));
}

export function roseOf({ design, ground, count, ...load }: RoseQuestion): readonly RoseRow[] {
  return liftRose(seatOf(design, ground, count), load);
}

/** The same, a place at a time. */
export function* roseInPieces(question: RoseQuestion): InPieces<readonly RoseRow[]> {
  const { design, ground, count, ...load } = question;
  const seat = seatOf(design, ground, count);
  const rows: RoseRow[] = [];
  while (rows.length < DIRECTIONS) {
    rows.push(roseRow(seat, load, rows.length));
    yield;
  }
  return rows;
}

/** Whether a rose worked out for one question is that of another, as fine or finer. */
export function answersRose(given: RoseQuestion, asked: RoseQuestion): boolean {
  return (
    given.design === asked.design &&
    given.ground === asked.ground &&
    given.press === asked.press &&
    given.shear === asked.shear &&
    given.share === asked.share &&
    given.count >= asked.count
  );
}

function roseRow(seat: Seat, load: Omit<BallLoad, 'bearing'>, place: number): RoseRow {
  const bearing = (360 / DIRECTIONS) * place;
  const { outcome, liftOff, pegs, keel } = standOf(seat, { ...load, bearing });
  const margins = [...pegs, ...(keel === null ? [] : [keel])].map(({ margin }) => margin);
  return {
    bearing,
    outcome,
    liftOff: outcome === 'balanced' ? liftOff : NaN,
    margin: Math.min(Infinity, ...margins),
  };
}

/** Rows at rest, the least and the most lifted; null where none is at rest. */
export function roseEnds(
  rows: readonly RoseRow[],
): { readonly least: RoseRow; readonly most: RoseRow } | null {
  const held = rows.filter(({ outcome }) => outcome === 'balanced');
  const [first] = held;
  if (first === undefined) return null;
  return held.reduce(
    ({ least, most }, row) => ({
      least: row.liftOff < least.liftOff ? row : least,
      most: row.liftOff > most.liftOff ? row : most,
    }),
    { least: first, most: first },
  );
}
