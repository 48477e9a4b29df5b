import { bare, beginning } from './acts.ts';
import { defaultSetting, type Design, type RockingSetting } from './settings.ts';

/*
 * The plain bench in plain words. Its sizes are teaching values: two short pegs, the weak ones about half as strong as the
 * firm ones and else alike, and a hold that wears where it slips.
 */

export type HoldName = 'firm' | 'weak';
export type PressName = 'middle' | 'edge' | 'again';

export const holdNames: readonly { readonly name: HoldName; readonly text: string }[] = [
  { name: 'firm', text: 'Firm hold' },
  { name: 'weak', text: 'Weak hold' },
];

export const pressNames: readonly { readonly name: PressName; readonly text: string }[] = [
  { name: 'middle', text: 'In the middle' },
  { name: 'edge', text: 'On one edge' },
  { name: 'again', text: 'Again and again' },
];

/** Movement is drawn so many times as large. */
export const TIMES = 10;

const EDGE = 100;
const CYCLES = 4;
/** Per cent of the hold that is left after long slipping. */
const LEFT = 80;
/** Of a peg, mm */
const LENGTH = 6;
const kinds: Readonly<Record<HoldName, Design['kind']>> = {
  firm: 'textured cemented',
  weak: 'smooth cemented',
};

/** What the plain bench sets; both sockets alike, for one is shown. */
export function plainSetting(hold: HoldName, press: PressName): RockingSetting {
  const design: Design = { ...defaultSetting.b, bed: bare.bed, kind: kinds[hold], length: LENGTH };
  const place = press === 'middle' ? 0 : EDGE;
  return { ...beginning, place, cycles: CYCLES, left: LEFT, a: design, b: design };
}

/** Smaller lifts, mm, are none; larger ones than the second are no longer tiny. */
const LEAST = 0.005;
const TINY = 0.18;
/** A last lift this much larger than the first has grown. */
const GROWN = 1.1;

export const underWay = 'Watch the cup.';

const said = {
  even: 'The whole cup presses on the bone. No edge lifts.',
  tiny: 'The near edge presses down. The far edge lifts a tiny bit.',
  more: 'The near edge presses down. The far edge lifts a bit more.',
  same: 'The cup rocks. Each lift is as small as the first.',
  grows: 'The cup rocks. The hold wears, so the lift grows.',
} as const;

/** What is said of the lifts of the far edge, mm: one of a press, or one after the other of a rocking. */
export function outcomeOf(lifts: readonly number[]): string {
  const [first = 0, last = 0] = [lifts[0], lifts.at(-1)];
  if (lifts.length > 1) return last > GROWN * first ? said.grows : said.same;
  if (first < LEAST) return said.even;
  return first < TINY ? said.tiny : said.more;
}

const held: Readonly<Record<HoldName, string>> = {
  firm: 'Two pegs hold it firmly.',
  weak: 'Two pegs hold it weakly.',
};
const pressed: Readonly<Record<PressName, string>> = {
  middle: 'The ball presses in the middle.',
  edge: 'The ball presses on one edge.',
  again: 'The ball presses on one edge, then on the other.',
};

/** The picture for those who hear it. */
export function pictureWords(hold: HoldName, press: PressName): string {
  return `A cup on bone, cut in half. ${held[hold]} ${pressed[press]}`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  underWay,
  ...Object.values(said),
  ...holdNames.flatMap(({ name }) => pressNames.map((press) => pictureWords(name, press.name))),
];
