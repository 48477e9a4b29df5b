import { seatMemory, type Fading, type SeatElement } from '../mechanics/index.ts';
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
  const memory = seatMemory(elements);
  const bear = (force: Vector, at: Vector) => memory.bear(loadInSpace(plane, force, at));
  const gaps: number[] = [];
  for (const { force, at } of rims) {
    const { converged, liftOff } = bear(force, at);
    if (!converged) break;
    gaps.push(liftOff);
    if (fading !== undefined) memory.wear(fading);
    if (press !== undefined) bear({ x: 0, z: -press }, { x: 0, z: 0 });
  }
  return gaps;
}
