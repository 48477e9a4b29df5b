/*
 * The plain bench in plain words. Its sizes are teaching values: three cups as wide as a socket is high, far enough
 * apart to be told from each other at a glance, and three presses, each twice the one before.
 */

export type CupName = 'flat' | 'shallow' | 'deep';

export const cups: readonly {
  readonly name: CupName;
  readonly text: string;
  readonly depth: number;
}[] = [
  { name: 'flat', text: 'Flat dish', depth: 0 },
  { name: 'shallow', text: 'Shallow cup', depth: 3 },
  { name: 'deep', text: 'Deep cup', depth: 7 },
];

/** Rim to rim, mm. */
export const CUP_WIDTH = 38;
/** mm */
export const BALL_DIAMETER = 48;

/** Presses from soft to hard, N. */
export const presses: readonly { readonly text: string; readonly load: number }[] = [
  { text: 'Soft press', load: 25 },
  { text: 'Firm press', load: 50 },
  { text: 'Hard press', load: 100 },
];

/** How hard a push is called, by the largest side force it stands for, N. */
const pushes: readonly { readonly below: number; readonly words: string }[] = [
  { below: 1, words: 'It slipped at once.' },
  { below: 12, words: 'It held a light push. Then it slipped.' },
  { below: 36, words: 'It held a firm push. Then it slipped.' },
  { below: 60, words: 'It held a strong push. Then it slipped.' },
  { below: Infinity, words: 'It held a very strong push. Then it slipped.' },
];

const comparisons = {
  more: 'That is more than last time.',
  less: 'That is less than last time.',
  same: 'That is about the same as last time.',
};
/** Two pushes closer than this part of the larger count as the same; both under this many newtons, too. */
const ALIKE = 0.05;
const NEXT_TO_NOTHING = 1;

export const waiting = 'Touch “Push” to see if the cup holds the ball.';
export const underWay = 'Watch the ball.';
export const pulledOut = 'The ball is out of the cup.';
export const neverSlipped = 'It held. It did not slip.';

/** What came of a push that ended at the side force `held`, N, in plain words. */
export function outcomeOf(held: number): string {
  return pushes.find(({ below }) => held < below)?.words ?? neverSlipped;
}

/** The same beside the try before; '' where there was none. */
export function comparedWith(before: number | null, held: number): string {
  if (before === null) return '';
  const larger = Math.max(before, held);
  const isAlike = larger < NEXT_TO_NOTHING || Math.abs(held - before) <= ALIKE * larger;
  return isAlike ? comparisons.same : held > before ? comparisons.more : comparisons.less;
}

/** The picture for those who hear it. */
export function pictureWords(cup: CupName, press: number): string {
  const shape = { flat: 'a flat dish', shallow: 'a shallow cup', deep: 'a deep cup' }[cup];
  const how = ['with a soft press', 'with a firm press', 'with a hard press'][press] ?? '';
  return `A ball is held in ${shape} ${how}.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  waiting,
  underWay,
  pulledOut,
  neverSlipped,
  ...pushes.map(({ words }) => words),
  ...Object.values(comparisons),
  ...cups.flatMap(({ name }) => presses.map((_, press) => pictureWords(name, press))),
];
