/*
 * The plain bench in plain words: one cup, its edge whole or worn in one place, four ways to push and two pushes. The
 * depth of the worn place and the two pushes are teaching values, far enough apart to be told from each other.
 */
import type { RimShape } from './setting.ts';

export type WornPlace = 'nowhere' | 'front' | 'back' | 'top';
export type PushWay = 'top' | 'front' | 'bottom' | 'back';
export type PushName = 'gentle' | 'strong';

/** Hours on the clock of a right socket at which the edge is worn. */
const CLOCK = { front: 3, back: 9, top: 12 } as const;

export const wornPlaces: readonly { readonly name: WornPlace; readonly text: string }[] = [
  { name: 'nowhere', text: 'Whole' },
  { name: 'front', text: 'Worn front' },
  { name: 'back', text: 'Worn back' },
  { name: 'top', text: 'Worn top' },
];

/** What a worn place changes in a shape; its depth stays as the shape has it. */
export function wornShape(name: WornPlace): Partial<RimShape> {
  return name === 'nowhere' ? { defect: 'none' } : { defect: 'cut', clock: CLOCK[name] };
}

/** The four ways, degrees from front toward top. */
export const pushWays: readonly {
  readonly name: PushWay;
  readonly text: string;
  readonly bearing: number;
}[] = [
  { name: 'top', text: 'Up', bearing: 90 },
  { name: 'back', text: 'Back', bearing: 180 },
  { name: 'front', text: 'Front', bearing: 0 },
  { name: 'bottom', text: 'Down', bearing: 270 },
];

/** Pushes as shares of the press. */
export const pushes: readonly {
  readonly name: PushName;
  readonly text: string;
  readonly ratio: number;
}[] = [
  { name: 'gentle', text: 'Gentle push', ratio: 0.25 },
  { name: 'strong', text: 'Strong push', ratio: 0.45 },
];

export const underWay = 'Watch the ball.';

/** What to do next. */
export function waiting(push: PushName): string {
  return `Touch an arrow for a ${push} push.`;
}

/** What came of a push, in plain words. */
export function outcomeOf(way: PushWay, worn: WornPlace, isHeld: boolean): string {
  if (isHeld) return `It held. The ${way} edge kept the ball in.`;
  return way === worn
    ? `The ball slipped out over the worn ${way} edge.`
    : `The ball slipped out over the low ${way} edge.`;
}

/** The pictures for those who hear them. */
export function faceWords(worn: WornPlace): string {
  const edge = worn === 'nowhere' ? 'Its edge is whole.' : `Its ${worn} edge is worn.`;
  return `Look straight into the cup of a right shoulder. ${edge}`;
}
export function cutWords(way: PushWay, worn: WornPlace): string {
  const edge = way === worn ? 'worn' : 'whole';
  return `The cup cut through, with the ball in it. The ${way} edge is ${edge}.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  ...pushes.map(({ name }) => waiting(name)),
  underWay,
  ...wornPlaces.flatMap(({ name: worn }) => [
    faceWords(worn),
    ...pushWays.flatMap(({ name: way }) => [
      cutWords(way, worn),
      outcomeOf(way, worn, true),
      outcomeOf(way, worn, false),
    ]),
  ]),
];
