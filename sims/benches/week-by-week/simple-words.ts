import type { Ingrowth } from '../../mechanics/index.ts';
import { mostly, runOf, type Moment } from './run.ts';
import { defaultWeek, WEEKS, type WeekSetting } from './settings.ts';

/*
 * The plain bench in plain words: a new cup that hardly moves or moves a lot, and what fills the gaps of its peg while the
 * weeks go by. The two presses are teaching values; the rates are those of the bench.
 */

export type MoveName = 'little' | 'much';

export const moves: readonly { readonly name: MoveName; readonly text: string }[] = [
  { name: 'little', text: 'It hardly moves' },
  { name: 'much', text: 'It moves a lot' },
];

const loads: Readonly<Record<MoveName, Pick<WeekSetting, 'press' | 'place'>>> = {
  little: { press: 250, place: 70 },
  much: { press: 1500, place: 95 },
};

/** The peg by itself, loaded from the first day; it begins before the first week. */
export function plainSetting(name: MoveName): WeekSetting {
  return { ...defaultWeek, ...loads[name], pegs: 'none', rest: 0, week: 0 };
}

export const plainRun = (name: MoveName): Ingrowth => runOf(plainSetting(name));

/** What the button says: at first, and when the weeks have gone by. */
export const buttonWords = { begin: 'Let the weeks go by', again: 'See it again' } as const;

const said = {
  waiting: 'It is the first day. The gaps in the peg are empty.',
  underWay: 'The weeks go by. Watch the gaps.',
  bone: 'Bone has filled most of each gap. It holds the peg.',
  soft: 'Soft tissue has filled the gaps. It does not hold the peg as bone does.',
  between: 'Some bone has grown. It has not filled the gaps.',
} as const;

/** Fuller than this, per cent of the gaps, is most of them. */
const MOST = 50;
/** Less than this share of the gaps cannot be seen. */
const LEAST = 0.1;

/** What is said at a time in weeks, from 0 to the last. */
export function outcomeOf({ weeks, share }: Ingrowth, time: number): string {
  if (time <= 0) return said.waiting;
  if (time < WEEKS) return said.underWay;
  if (100 * share > MOST) return said.bone;
  return mostly(weeks.at(-1)?.places ?? []) === 'is lost' ? said.soft : said.between;
}

/** The time in a few words, as it stands in the picture. */
export function whenWords(time: number): string {
  if (time < 1) return 'first day';
  return time < WEEKS / 2 ? 'weeks later' : 'months later';
}

/** What lies in most gaps, as it stands in the picture; nothing where there is little yet. */
export function fillingWords({ share, under }: Moment): string {
  if (share > LEAST) return 'new bone';
  return mostly(under?.places ?? []) === 'is lost' ? 'soft tissue' : '';
}

/** The picture for those who hear it. */
export function pictureWords(name: MoveName): string {
  const moved = name === 'little' ? 'It hardly moves.' : 'It moves a lot.';
  return `A new cup on its bone, cut in half. Its peg has rings. ${moved}`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  said.waiting,
  said.underWay,
  said.bone,
  said.soft,
  said.between,
  ...moves.map(({ name }) => pictureWords(name)),
];
