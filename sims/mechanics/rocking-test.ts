import { inRange, positive } from '../geometry/numeric.ts';
import { firstFactor, greatestFactor, growth, lettingGo, type LettingGo } from './growing-load.ts';
import { memoryOn, type Fading, type SeatMemory } from './seat-memory.ts';
import { springsOf } from './seat-springs.ts';
import type { SeatElement, SeatLoad, SeatOutcome } from './seat-types.ts';

export interface RockingQuestion {
  readonly seat: { readonly elements: readonly SeatElement[] };
  /** The load at one rim; the other rim gets the same, turned half round the z axis. */
  readonly load: SeatLoad;
  /** Whole number, 0 and up */
  readonly cycles: number;
  /**
   * Whether the ball passes the middle on its way from rim to rim, with its press alone, as a head does that slides over
   * the face. It goes from rim to rim in one step where this is left out.
   */
  readonly throughMiddle?: boolean | undefined;
  /** How strengths fall as elements slip to and fro; they stay where it is left out. */
  readonly fading?: Fading | undefined;
  /** A gap counts from here, mm; 0.01 where it is left out. */
  readonly leastGap?: number | undefined;
}

/** One cycle: the load at one rim, then at the other. Gaps in mm, at the worst place of the bed. */
export interface RockingCycle {
  readonly liftOff: number;
  readonly oppositeLiftOff: number;
  /** The furthest that an element has come out by the end of the cycle, mm */
  readonly slip: number;
}

export interface RockingResult {
  /** How the last load ended; `balanced` where all cycles were borne. */
  readonly outcome: SeatOutcome;
  readonly converged: boolean;
  readonly overturned: boolean;
  /** Those that were borne. */
  readonly cycles: readonly RockingCycle[];
  /** Size of the load at which the first gap opens as it grows from nothing, N; null where none ever does */
  readonly firstGapLoad: number | null;
  /** Greatest size of the load that is carried, N; Infinity where every one is */
  readonly greatestLoad: number;
  /** In the order in which they let go as the load grows to the greatest, or to the load given if that is less */
  readonly lettingGo: readonly LettingGo[];
}

const USUAL_LEAST_GAP = 0.01;
/**
 * Rocks a socket on its interface: the load at one rim and at the other, over and over. What has slipped stays slipped
 * (Jenkins elements): its pull then begins further out, and on the way back it resists with its strength at most. With
 * strengths that stay, gaps settle after a few cycles; with strengths that fade they may go on growing.
 *
 * What `throughMiddle` does: with strengths that stay, pegs end at the same gaps with it and without. It presses home what
 * has slipped, so that holds slip further in each cycle; with strengths that fade a lone peg’s gap then grows further,
 * while a bonded bed, whose slip is undone, grows less. The tests say by how much.
 *
 * Besides, the load at one rim is made to grow from nothing, for the first gap, the greatest load, and the order in which
 * the elements let go.
 *
 * @throws RangeError for elements or a load that {@link solveSeat} does not take, or cycles that are no whole number
 */
export function rockingTest({
  seat,
  load,
  cycles,
  throughMiddle = false,
  fading,
  leastGap = USUAL_LEAST_GAP,
}: RockingQuestion): RockingResult {
  if (!Number.isInteger(cycles) || cycles < 0) {
    throw new RangeError(`cycles is ${cycles}; allowed: 0, 1, 2 …`);
  }
  inRange('leastGap', leastGap, 0, Infinity, 'mm');
  if (fading !== undefined) {
    inRange('fading.residual', fading.residual, 0, 1, '');
    positive('fading.over', fading.over, 'mm');
  }
  const { elements } = seat;
  const springs = springsOf(elements);
  const way = { load, middle: throughMiddle ? pressAlone(load) : undefined, cycles, fading };
  const rocked = rock(memoryOn(elements, springs), way);
  const size = Math.hypot(...load.force);
  const grown = growth(elements, springs, load);
  const greatest = greatestFactor(grown);
  const top = Math.min(1, greatest);
  const gap = firstFactor((factor) => grown(factor).liftOff > leastGap, greatest);
  return {
    ...rocked,
    converged: rocked.outcome === 'balanced',
    overturned: rocked.outcome === 'overturned',
    firstGapLoad: gap === null ? null : gap * size,
    greatestLoad: greatest * size,
    lettingGo: lettingGo(springs, grown, top).map(({ element, load: factor }) => ({
      element,
      load: factor * size,
    })),
  };
}

function turnedHalfRound({ force, point }: SeatLoad): SeatLoad {
  return {
    force: [-force[0], -force[1], force[2]],
    point: [-point[0], -point[1], point[2]],
  };
}

/** The press of a load, straight in at the middle of the face. */
function pressAlone({ force }: SeatLoad): SeatLoad {
  return { force: [0, 0, force[2]], point: [0, 0, 0] };
}

interface Way {
  readonly load: SeatLoad;
  readonly middle: SeatLoad | undefined;
  readonly cycles: number;
  readonly fading: Fading | undefined;
}

function rock(
  memory: SeatMemory,
  { load, middle, cycles, fading }: Way,
): { outcome: SeatOutcome; cycles: readonly RockingCycle[] } {
  const rims = [load, turnedHalfRound(load)];
  const done: RockingCycle[] = [];
  for (let cycle = 0; cycle < cycles; cycle++) {
    const lifts: number[] = [];
    for (const rim of rims) {
      const { outcome, liftOff } = memory.bear(rim);
      if (outcome !== 'balanced') return { outcome, cycles: done };
      lifts.push(liftOff);
      if (fading !== undefined) memory.wear(fading);
      const between = middle === undefined ? 'balanced' : memory.bear(middle).outcome;
      if (between !== 'balanced') return { outcome: between, cycles: done };
    }
    const [liftOff = 0, oppositeLiftOff = 0] = lifts;
    done.push({ liftOff, oppositeLiftOff, slip: memory.slip() });
  }
  return { outcome: 'balanced', cycles: done };
}
