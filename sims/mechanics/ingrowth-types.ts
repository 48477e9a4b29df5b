import type { SeatElement, SeatLoad, SeatOutcome } from './seat-types.ts';

/** How much movement bone puts up with. */
export interface MotionThresholds {
  /** Below it bone grows in, mm, 0 and up */
  readonly lower: number;
  /** Above it bone that has grown in is lost, mm, `lower` and up */
  readonly upper: number;
}

/** How fast bone grows in and is lost, and what it does for the hold. */
export interface IngrowthRates {
  /** Of growth while there is little bone, a week, 0 and up */
  readonly growth: number;
  /** Of loss, a week, 0 and up: the share falls by e^−loss */
  readonly loss: number;
  /** Share from which growth can start where there is no bone yet, above 0 and below `ceiling` */
  readonly seed: number;
  /** Share that is not passed, above 0 to 1 */
  readonly ceiling: number;
  /** What stiffness and strength of a place are multiplied by where its share is 1, each 1 and up */
  readonly stiffening: number;
  readonly strengthening: number;
}

export interface IngrowthQuestion {
  readonly seat: {
    readonly elements: readonly SeatElement[];
    /** Places of the elements between which and the bone bone can grow; all `limited` ones where it is left out */
    readonly growing?: readonly number[] | undefined;
  };
  /** The load of every week, or what it is in a week, counted from 0; null where the joint rests */
  readonly load: SeatLoad | ((week: number) => SeatLoad | null);
  /** Whole number, 0 and up */
  readonly weeks: number;
  /** {@link usualMotionThresholds} where they are left out */
  readonly thresholds?: MotionThresholds | undefined;
  /** {@link usualIngrowthRates} where they are left out, each for itself */
  readonly rates?: Partial<IngrowthRates> | undefined;
}

/** What bone does at a place in a week, in words. */
export type BoneAnswer = 'grows' | 'stays' | 'is lost';

/** A place at which bone can grow. */
export interface IngrowthPlace {
  /** Its number among the seat’s elements */
  readonly element: number;
  /** How far the load moves it, mm; Infinity where the seat does not bear the load */
  readonly motion: number;
  /** In-grown share when the week ends, 0 to `ceiling` */
  readonly share: number;
  readonly bone: BoneAnswer;
}

export interface IngrowthWeek {
  /** From 1; at 0 nothing has happened yet */
  readonly week: number;
  readonly places: readonly IngrowthPlace[];
  /** Mean of the places’ shares when the week ends */
  readonly share: number;
  /** Greatest of their motions in this week, mm */
  readonly motion: number;
  /** As the seat was under load in this week, with the bone it began the week with */
  readonly outcome: SeatOutcome;
  /** Far rim’s lift-off, mm; 0 in a week of rest */
  readonly liftOff: number;
}

export interface Ingrowth {
  readonly weeks: readonly IngrowthWeek[];
  /** Mean share in the end */
  readonly share: number;
  /** The elements with the bone they have in the end, as `solveSeat` takes them */
  readonly elements: readonly SeatElement[];
}
