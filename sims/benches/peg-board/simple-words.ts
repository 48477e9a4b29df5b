import { presets } from './presets.ts';
import { seatOf, type Seat } from './seat.ts';
import { defaultBoard, newPeg, type BallLoad, type Design } from './settings.ts';
import { standOf, type Stand } from './stand.ts';

/*
 * The plain bench in plain words: three ways to hold one cup, two edges to press, and how far the other edge lifts. The
 * press, the sizes, and where “some” ends and “a lot” begins are teaching values.
 */

export type HoldName = 'one' | 'apart' | 'fin';
export type EdgeName = 'front' | 'top';

export const holdings: readonly { readonly name: HoldName; readonly text: string }[] = [
  { name: 'one', text: 'One peg' },
  { name: 'apart', text: 'Pegs far apart' },
  { name: 'fin', text: 'A fin' },
];

export const edges: readonly {
  readonly name: EdgeName;
  readonly text: string;
  /** Degrees from the front toward the top. */
  readonly bearing: number;
  /** The edge across from it. */
  readonly other: 'back' | 'bottom';
}[] = [
  { name: 'front', text: 'Press the front', bearing: 0, other: 'back' },
  { name: 'top', text: 'Press the top', bearing: 90, other: 'bottom' },
];

/** How a lift is called, by the least that is called so, mm. */
const lifts: readonly { readonly from: number; readonly words: string }[] = [
  { from: 0.2, words: 'lifts a lot' },
  { from: 0.1, words: 'lifts some' },
  { from: 0, words: 'lifts just a little' },
];

const presetDesign = (id: string): Design =>
  presets.find((preset) => preset.id === id)?.design ?? defaultBoard.design;
const designs: Readonly<Record<HoldName, Design>> = {
  one: { pegs: [{ ...newPeg, x: 0, y: 0 }], keel: null },
  apart: presetDesign('far'),
  fin: presetDesign('keel'),
};

/** A cup held in one of the ways, pressed at one of its edges. */
export interface Pressed {
  readonly design: Design;
  readonly seat: Seat;
  readonly stand: Stand;
  readonly load: BallLoad;
}

export function pressedAt(hold: HoldName, edge: EdgeName): Pressed {
  const design = designs[hold];
  const seat = seatOf(design, defaultBoard.ground);
  const load = { ...defaultBoard.load, bearing: edgeOf(edge).bearing };
  return { design, seat, stand: standOf(seat, load), load };
}

export function edgeOf(name: EdgeName): (typeof edges)[number] {
  const edge = edges.find((each) => each.name === name);
  if (edge === undefined) throw new RangeError(`name is ${name}; allowed: an edge`);
  return edge;
}

export const waiting = 'Press an edge. Then watch the other edge.';

/** What a press does to the edge across, in plain words. */
export function outcomeOf(edge: EdgeName, { stand }: Pick<Pressed, 'stand'>): string {
  const words = lifts.find(({ from }) => stand.liftOff >= from)?.words ?? '';
  return `You press the ${edge}. The ${edgeOf(edge).other} edge ${words}.`;
}

/** The picture for those who hear it. */
export function pictureWords(hold: HoldName, edge: EdgeName): string {
  const what = { one: 'one peg', apart: 'pegs far apart', fin: 'a fin' }[hold];
  const ends = edge === 'front' ? 'back to front' : 'bottom to top';
  return `A new cup on its bone, cut from ${ends}. It has ${what}.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  waiting,
  ...holdings.flatMap(({ name: hold }) =>
    edges.flatMap(({ name: edge }) => [
      pictureWords(hold, edge),
      outcomeOf(edge, pressedAt(hold, edge)),
    ]),
  ),
];
