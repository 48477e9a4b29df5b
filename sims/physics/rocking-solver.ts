import type { Fading, SeatElement } from '../mechanics/index.ts';
import { equilibrium } from '../mechanics/seat-equilibrium.ts';
import { loadParts, springsOf } from '../mechanics/seat-springs.ts';
import { seatSolution, slipAt } from '../mechanics/seat.ts';
import { loadInSpace, type RockingPlane } from './rocking-plane.ts';
import type { RimReading } from './rocking-reading.ts';
import type { Vector } from './vector.ts';

/** A rocking as it was measured, to be solved. */
export interface SolvedRocking {
  readonly elements: readonly SeatElement[];
  readonly plane: RockingPlane;
  /** The loads as they were measured, one after the other */
  readonly rims: readonly RimReading[];
  readonly fading?: Fading | undefined;
  /** N: from rim to rim the ball passes the middle under this press. It is not stopped at where this is left out. */
  readonly press?: number | undefined;
}

/**
 * The gap that the equilibrium solver has at each load of a rocking, mm, given the loads as they were measured: a socket
 * that tilts needs less to hold the ball, and that is not the solver’s business. Slip is kept from load to load, and
 * strengths fall between two rim loads, as in the scene. Ends before a load that has no rest.
 */
export function solvedGaps(question: SolvedRocking): readonly number[] {
  const { elements, plane, rims, fading, press } = question;
  const fresh = springsOf(elements);
  const ways = new Float64Array(fresh.count);
  let springs = fresh;
  let slips = new Float64Array(fresh.count);
  let start: Float64Array | undefined;

  /** The gap under one load, or null where nothing balances it. */
  function bear(force: Vector, at: Vector): number | null {
    const load = loadParts(loadInSpace(plane, force, at), springs.arm);
    const found = equilibrium(springs, load, slips, start);
    if (found.outcome !== 'balanced') return null;
    const { liftOff } = seatSolution(elements, springs, slips, found);
    const next = slips.map((slip, i) => slipAt(springs, i, found.gaps[i] ?? 0, slip));
    next.forEach((slip, i) => (ways[i] = (ways[i] ?? 0) + Math.abs(slip - (slips[i] ?? 0))));
    slips = next;
    start = found.coordinates;
    return liftOff;
  }

  const gaps: number[] = [];
  for (const { force, at } of rims) {
    const gap = bear(force, at);
    if (gap === null) break;
    gaps.push(gap);
    if (fading !== undefined) springs = { ...fresh, strength: faded(fresh.strength, ways, fading) };
    if (press !== undefined) bear({ x: 0, z: -press }, { x: 0, z: 0 });
  }
  return gaps;
}

function faded(
  strength: Float64Array,
  ways: Float64Array,
  { residual, over }: Fading,
): Float64Array {
  return strength.map(
    (whole, i) => whole * (residual + (1 - residual) * Math.exp(-(ways[i] ?? 0) / over)),
  );
}
