import type { CarriedContact } from '../../mechanics/index.ts';
import { printOf, type Print } from './print.ts';
import { defaultPrint } from './setting.ts';

/*
 * The plain bench in plain words. Its sizes are teaching values: three fits far enough apart to be told from each other
 * at a glance, on the plastic and under the load the bench opens with.
 */

export type FitName = 'close' | 'middle' | 'loose';

export const fits: readonly {
  readonly name: FitName;
  readonly text: string;
  /** Radial, mm. */
  readonly mismatch: number;
}[] = [
  { name: 'close', text: 'Close fit', mismatch: 1 },
  { name: 'middle', text: 'Middle fit', mismatch: 3 },
  { name: 'loose', text: 'Loose fit', mismatch: 6 },
];

/** Places of the ball from the middle outward: how far, mm, and what is said of it. */
export const slides: readonly { readonly translation: number; readonly words: string }[] = [
  { translation: 0, words: 'The ball is in the middle.' },
  { translation: 1, words: 'The ball has slid a little.' },
  { translation: 2, words: 'The ball has slid some more.' },
  { translation: 3, words: 'The ball has slid far.' },
];

/** How large a spot is called, by the least area it is called so for, mm². */
const spots: readonly { readonly from: number; readonly words: string }[] = [
  { from: 55, words: 'It presses on a big spot.' },
  { from: 36, words: 'It presses on a spot of middle size.' },
  { from: 0, words: 'It presses on a small spot.' },
];

const AT_EDGE = 'It presses on the edge of the cup.';
const MEETS_EDGE = 'Its spot has met the edge of the cup.';

export const captions = ['From the side', 'Looking into the cup'] as const;

/** The print of a fit with the ball at one of the places. */
export function printAt(fit: FitName, slide: number): Print {
  const mismatch = fits.find(({ name }) => name === fit)?.mismatch ?? defaultPrint.mismatch;
  const translation = slides[slide]?.translation ?? 0;
  return printOf({ ...defaultPrint, mismatch, translation });
}

/** Where and on how much the ball presses, in plain words. */
export function spotWords({ state, contactArea }: CarriedContact): string {
  if (state === 'on the rim edge') return AT_EDGE;
  if (state === 'cut by the rim') return MEETS_EDGE;
  return spots.find(({ from }) => contactArea >= from)?.words ?? AT_EDGE;
}

export function outcomeOf(fit: FitName, slide: number): string {
  return `${slides[slide]?.words ?? ''} ${spotWords(printAt(fit, slide).contact)}`;
}

/** The picture for those who hear it. */
export function pictureWords(fit: FitName): string {
  const how = { close: 'a close fit', middle: 'a middle fit', loose: 'a loose fit' }[fit];
  return `A ball in a cup with ${how}. A spot shows where it presses.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  AT_EDGE,
  MEETS_EDGE,
  ...spots.map(({ words }) => words),
  ...slides.map(({ words }) => words),
  ...fits.map(({ name }) => pictureWords(name)),
];
