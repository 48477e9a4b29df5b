import { equilibrium } from './seat-equilibrium.ts';
import { isLimited, loadParts, type Springs } from './seat-springs.ts';
import type { SeatElement, SeatLoad, SeatSolution } from './seat-types.ts';
import { seatSolution } from './seat.ts';

/** An element that reached its strength, and the size of the load at which it did, N. */
export interface LettingGo {
  readonly element: number;
  readonly load: number;
}

/** A load this many times the one asked for stands for any load. */
const ANY = 1e6;
/** Loads are found to this share of themselves; those at which elements let go, to this share of the largest. */
const FINENESS = 1e-4;
const STEPS_OF_LETTING_GO = 512;

/** The rest under a share of a load, each found once. */
export function growth(
  elements: readonly SeatElement[],
  springs: Springs,
  load: SeatLoad,
): (factor: number) => SeatSolution {
  const slips = new Float64Array(springs.count);
  const whole = loadParts(load, springs.arm);
  const known = new Map<number, SeatSolution>();
  return (factor) => {
    const before = known.get(factor);
    if (before !== undefined) return before;
    const found = equilibrium(
      springs,
      whole.map((part) => part * factor),
      slips,
    );
    const solution = seatSolution(elements, springs, slips, found);
    known.set(factor, solution);
    return solution;
  };
}

/** The greatest multiple of the load that is carried; Infinity where every one is. */
export function greatestFactor(grown: (factor: number) => SeatSolution): number {
  if (grown(ANY).converged) return Infinity;
  return firstFactor((factor) => !grown(factor).converged, ANY) ?? Infinity;
}

/** Least factor from which on something holds, to {@link FINENESS}; null where it does not hold up to `most`. */
export function firstFactor(holds: (factor: number) => boolean, most: number): number | null {
  let high = Number.isFinite(most) ? most * (1 - FINENESS) : ANY;
  if (!holds(high)) return null;
  let low = high / ANY / ANY;
  if (holds(low)) return 0;
  while (high / low > 1 + FINENESS) {
    const middle = Math.sqrt(low * high);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Which elements slip under a share of the load, and from which share on, in order. */
export function lettingGo(
  springs: Springs,
  grown: (factor: number) => SeatSolution,
  top: number,
): readonly LettingGo[] {
  const slippingAt = (factor: number): readonly number[] =>
    grown(factor).elements.flatMap(({ state }, i) =>
      isLimited(springs, i) && state === 'slipping' ? [i] : [],
    );
  const end = Number.isFinite(top) ? top * (1 - FINENESS) : 1;
  const between = (low: number, high: number): readonly LettingGo[] => {
    const before = low === 0 ? [] : slippingAt(low);
    const fresh = slippingAt(high).filter((element) => !before.includes(element));
    if (fresh.length === 0) return [];
    if (high - low <= end / STEPS_OF_LETTING_GO)
      return fresh.map((element) => ({ element, load: high }));
    const middle = (low + high) / 2;
    return [...between(low, middle), ...between(middle, high)];
  };
  return between(0, end);
}
