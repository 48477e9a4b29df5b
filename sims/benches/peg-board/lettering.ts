import { fixedText, mm, newtons } from '../../shared/format.ts';
import type { HoldReading, Stand } from './stand.ts';

export { small } from '../rocking-bench/lettering.ts';

/** Smaller pulls are not worth a word, N. */
export const LEAST_PULL = 0.5;
/** A margin beyond this is written as more than it. */
const MOST_MARGIN = 20;

export const megapascals = (value: number): string => `${fixedText(value, 2)}\u00a0MPa`;
export const tenths = (value: number): string => mm(value, 1);

/** "× 2.1": how many times the pull a hold would bear. */
export function marginText({ margin }: Pick<HoldReading, 'margin'>): string {
  return margin > MOST_MARGIN ? `> ${MOST_MARGIN}\u00a0×` : `${fixedText(margin, 1)}\u00a0×`;
}

export const isPulled = ({ pull }: Pick<HoldReading, 'pull'>): boolean => pull >= LEAST_PULL;

/** Two short lines to stand at a peg. */
export function holdLines(hold: HoldReading): readonly [string, string] {
  if (hold.isSlipping) return [newtons(hold.pull), 'slips'];
  if (isPulled(hold)) return [newtons(hold.pull), marginText(hold)];
  return hold.pull <= -LEAST_PULL ? [newtons(-hold.pull), 'pressed'] : [newtons(0), 'no pull'];
}

export const outcomeWords: Readonly<Record<Stand['outcome'], string>> = {
  balanced: '',
  overturned: 'Overturned: nothing balances this load.',
  sliding: 'Slides off: nothing holds it along the bone.',
  unsettled: 'The search for its rest did not end; no numbers are shown.',
};

export const outcomeShort: Readonly<Record<Stand['outcome'], string>> = {
  balanced: 'at rest',
  overturned: 'overturned',
  sliding: 'slides off',
  unsettled: 'not found',
};

/** "3.0 mm to the front, 7.0 mm up" */
export function placeText({ x, y }: { readonly x: number; readonly y: number }): string {
  const parts = [
    ...(Math.abs(x) < 0.05 ? [] : [`${tenths(Math.abs(x))} to the ${x > 0 ? 'front' : 'back'}`]),
    ...(Math.abs(y) < 0.05 ? [] : [`${tenths(Math.abs(y))} ${y > 0 ? 'up' : 'down'}`]),
  ];
  return parts.length === 0 ? 'in the middle' : parts.join(', ');
}
