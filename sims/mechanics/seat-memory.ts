import { equilibrium } from './seat-equilibrium.ts';
import { loadParts, springsOf, type Springs } from './seat-springs.ts';
import type { SeatElement, SeatLoad, SeatSolution } from './seat-types.ts';
import { homeAt, seatSolution, slipAt } from './seat.ts';

/** A strength that falls with all the way an element has slipped: to `residual` of itself, by 1/e for each `over` mm. */
export interface Fading {
  /** Share that is left in the end, 0 to 1 */
  readonly residual: number;
  /** mm, above 0 */
  readonly over: number;
}

/** A socket that is loaded again and again, and what its interface keeps of it. */
export interface SeatMemory {
  /** Bears one more load. Where nothing balances it, nothing is kept of it. */
  readonly bear: (load: SeatLoad) => SeatSolution;
  /** Lets strengths fall by the ways slipped so far. */
  readonly wear: (fading: Fading) => void;
  /** The furthest that an element has come out so far, mm */
  readonly slip: () => number;
}

/** A fresh socket. What slips under a load stays slipped under the next (Jenkins elements), and what is
 * crushed stays crushed. */
export function seatMemory(elements: readonly SeatElement[]): SeatMemory {
  return memoryOn(elements, springsOf(elements));
}

/** The same, for elements whose springs there are already. */
export function memoryOn(elements: readonly SeatElement[], fresh: Springs): SeatMemory {
  const ways = new Float64Array(fresh.count);
  let springs = fresh;
  let slips = new Float64Array(fresh.count);
  let start: Float64Array | undefined;
  return {
    bear: (load) => {
      const found = equilibrium(springs, loadParts(load, springs.arm), slips, start);
      const solution = seatSolution(elements, springs, slips, found);
      if (!solution.converged) return solution;
      const [next, homes] = [slips.slice(), springs.homes.slice()];
      for (let i = 0; i < springs.count; i++) {
        const [gap, slip] = [found.gaps[i] ?? 0, slips[i] ?? 0];
        const slipped = slipAt(springs, i, gap, slip);
        ways[i] = (ways[i] ?? 0) + Math.abs(slipped - slip);
        next[i] = slipped;
        homes[i] = homeAt(springs, i, gap, slip);
      }
      slips = next;
      springs = { ...springs, homes };
      start = found.coordinates;
      return solution;
    },
    wear: ({ residual, over }) => {
      const strength = fresh.strength.map(
        (whole, i) => whole * (residual + (1 - residual) * Math.exp(-(ways[i] ?? 0) / over)),
      );
      springs = { ...springs, strength };
    },
    slip: () => slips.reduce((most, slip) => Math.max(most, slip), 0),
  };
}
