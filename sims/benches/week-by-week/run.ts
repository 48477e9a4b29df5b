import {
  ingrowth,
  type BoneAnswer,
  type Ingrowth,
  type IngrowthPlace,
  type IngrowthWeek,
} from '../../mechanics/index.ts';
import { loadOf, seatOf } from './seat.ts';
import { MICROMETRES, WEEKS, type WeekSetting } from './settings.ts';

/** All weeks of a setting. */
export function runOf(setting: WeekSetting): Ingrowth {
  const { press, rest, lower, upper } = setting;
  const load = loadOf(setting);
  return ingrowth({
    seat: seatOf(setting),
    load: (week) => (week < rest || press === 0 ? null : load),
    weeks: WEEKS,
    thresholds: { lower: lower / MICROMETRES, upper: upper / MICROMETRES },
  });
}

/** What is drawn at a moment between two weeks. */
export interface Moment {
  /** Share of each space, and of all of them */
  readonly shares: readonly number[];
  readonly share: number;
  /** The week under way: what moves in it, and what bone does */
  readonly under: IngrowthWeek | undefined;
}

/** At a time in weeks, from 0 to the last. */
export function momentAt({ weeks }: Ingrowth, time: number): Moment {
  const whole = Math.min(Math.floor(time), weeks.length);
  const part = time - whole;
  const [past, next] = [weeks[whole - 1], weeks[whole]];
  const count = (past ?? next)?.places.length ?? 0;
  const of = (week: IngrowthWeek | undefined, i: number): number => week?.places[i]?.share ?? 0;
  const shares = Array.from({ length: count }, (_, i) => {
    const now = of(past, i);
    return next === undefined ? now : now + part * (of(next, i) - now);
  });
  return {
    shares,
    share: shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length),
    // On the stroke of a week it is the one that has passed.
    under: part === 0 ? (past ?? next) : next,
  };
}

/** What bone does at most places in a week. */
export function mostly(places: readonly IngrowthPlace[]): BoneAnswer {
  const count = (answer: BoneAnswer): number => places.filter(({ bone }) => bone === answer).length;
  const answers = ['grows', 'stays', 'is lost'] as const;
  return answers.reduce((most, next) => (count(next) > count(most) ? next : most));
}
