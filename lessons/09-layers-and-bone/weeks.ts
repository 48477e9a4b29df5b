import { runOf } from '../../sims/benches/week-by-week/run.ts';
import {
  defaultWeek,
  MICROMETRES,
  WEEKS,
  type WeekSetting,
} from '../../sims/benches/week-by-week/settings.ts';
import {
  ingrowth,
  usualIngrowthRates,
  usualMotionThresholds,
  type Ingrowth,
  type IngrowthPlace,
} from '../../sims/mechanics/index.ts';

/*
 * What the lesson says of bone that grows in, computed: the socket of Week by Week under its load, and one hold by itself.
 * Rates are teaching values set by one study in dogs.
 */

export { MICROMETRES, WEEKS };
/** µm */
export const LOWER = MICROMETRES * usualMotionThresholds.lower;
export const UPPER = MICROMETRES * usualMotionThresholds.upper;
export const { stiffening, ceiling } = usualIngrowthRates;
/** Weeks of rest that the lesson sets against none. */
export const REST = 6;

/** A setting of the bench with all its weeks. */
export interface Run {
  readonly name: string;
  readonly setting: WeekSetting;
  readonly weeks: Ingrowth['weeks'];
  readonly run: Ingrowth;
  /** Mean share in the end */
  readonly share: number;
  /** Spaces more than half bone in the end */
  readonly filled: number;
  readonly places: readonly IngrowthPlace[];
  /** Motion of the space that moves most, in the first loaded week and in the last, mm */
  readonly motion: readonly [first: number, last: number];
}

function runNamed(name: string, change: Partial<WeekSetting>): Run {
  const setting = { ...defaultWeek, week: 0, ...change };
  const run = runOf(setting);
  const last = run.weeks.at(-1);
  if (last === undefined) throw new Error(`${name}: it has no weeks`);
  return {
    name,
    setting,
    run,
    weeks: run.weeks,
    share: run.share,
    filled: last.places.filter(({ share }) => share > 0.5).length,
    places: last.places,
    motion: [run.weeks[setting.rest]?.motion ?? NaN, last.motion],
  };
}

/** A press about half as large, as the bench’s slider can be set, N. */
const LIGHT = 380;

/** The fluted peg by itself under the bench’s load: from the first day, after rest, and with about half of the load. */
export const early = runNamed('loaded at once', { pegs: 'none' });
export const late = runNamed(`after ${REST} weeks`, { pegs: 'none', rest: REST });
export const half = runNamed('about half the load', { pegs: 'none', press: LIGHT });
export const nearRim = runNamed('nearer the rim', { pegs: 'none', place: 90 });
const nearRimLate = runNamed('nearer the rim, late', {
  pegs: 'none',
  place: 90,
  rest: REST,
});
/** The same with three small cemented pegs round it. */
export const pegged = runNamed('with small pegs', {});
const peggedLate = runNamed('with small pegs, late', { rest: REST });
export const runs: readonly Run[] = [early, late, half, nearRim, nearRimLate, pegged, peggedLate];

/** What the second prediction asks: how the late one ends beside the early one. */
export const restOutcome: 'same' | 'more' | 'less' =
  late.share > 1.2 * early.share ? 'more' : late.share < early.share / 1.2 ? 'less' : 'same';

/** Filling that nothing disturbs: the first weeks that the rates were set by, and what follows. */
const LONGEST = 52;
export const undisturbed = loneOf(0.001, 0, LONGEST);

/** One hold that bears the whole load by itself: `motion` mm before any bone, `rest` weeks without load. */
export interface Lone {
  readonly start: number;
  readonly rest: number;
  readonly weeks: Ingrowth['weeks'];
  readonly share: number;
  readonly last: number;
}

export function loneOf(motion: number, rest: number, weeks = WEEKS): Lone {
  const load = 100;
  const grown = ingrowth({
    seat: {
      elements: [
        {
          position: [0, 0, 0],
          normal: [0, 0, 1],
          normalStiffness: load / motion,
          tangentialStiffness: 0,
          tension: 'limited',
          strength: 10 * load,
        },
      ],
    },
    load: (week) => (week < rest ? null : { force: [0, 0, load], point: [0, 0, 0] }),
    weeks,
  });
  return {
    start: motion,
    rest,
    weeks: grown.weeks,
    share: grown.share,
    last: grown.weeks.at(-1)?.motion ?? NaN,
  };
}

/** µm before any bone: one above the lower threshold, one above the upper one. */
export const SLIGHT = 40;
export const MUCH = 200;
const lone = (micrometres: number, rest: number): Lone => loneOf(micrometres / MICROMETRES, rest);
/** Races that differ by a week of rest and end apart. */
export const slightShort = lone(SLIGHT, 3);
export const slightLong = lone(SLIGHT, 4);
export const muchShort = lone(MUCH, 3);
export const muchLong = lone(MUCH, 4);
export const races: readonly Lone[] = [slightShort, slightLong, muchShort, muchLong];

/** Share of bone at which a lone hold, that moves `start` µm without any, comes down to the lower threshold. */
export const shareNeeded = (start: number): number => (start / LOWER - 1) / (stiffening - 1);
