import type { Point } from '../../figures/view.ts';
import { curveOf, outlineLine } from './outline.ts';
import { obstacle, others } from './room.ts';
import type { BallLoad, Design, Ground, PegPlace } from './settings.ts';
import { pegRanges } from './settings.ts';

/** What a lesson asks to be laid out: so many pegs of one kind, and what they have to do. */
export interface PegTask {
  readonly ground: Ground;
  /** Carried to every direction of the rose in turn */
  readonly load: Omit<BallLoad, 'bearing'>;
  readonly peg: Omit<PegPlace, 'x' | 'y'>;
  /** Places to begin with, and places that meet everything, mm */
  readonly start: PegPlaces;
  readonly way: PegPlaces;
  readonly limits: {
    /** Lift-off, mm, wherever on the rim the load is */
    readonly lift: number;
    /** Pull-out ÷ pull of every peg */
    readonly margin: number;
    /** Bone left beside every peg, mm */
    readonly wall: number;
  };
}

/** Where the pegs stand, mm: to the front and up. */
export type PegPlaces = readonly Point[];

export const designOf = ({ peg }: Pick<PegTask, 'peg'>, places: PegPlaces): Design => ({
  pegs: places.map((place) => ({ ...peg, ...place })),
  keel: null,
});

export const placesOf = ({ pegs }: Design): PegPlaces => pegs.map(({ x, y }) => ({ x, y }));

/** "0*9_4.5*-7": each place as forward*up. */
export const writePlaces = (places: PegPlaces): string =>
  places.map(({ x, y }) => `${tenth(x)}*${tenth(y)}`).join('_');

/** Places as they were written; null unless there are as many as the task has pegs, and each can stand where it does. */
export function readPlaces(task: PegTask, text: string): PegPlaces | null {
  const places = text.split('_').map((each) => {
    const found = /^(-?\d{1,2}(?:\.\d)?)\*(-?\d{1,2}(?:\.\d)?)$/.exec(each);
    return found === null ? null : { x: Number(found[1]), y: Number(found[2]) };
  });
  const known = places.filter((place) => place !== null);
  if (known.length !== places.length || known.length !== task.start.length) return null;
  return canStand(task, known) ? known : null;
}

function canStand(task: PegTask, places: PegPlaces): boolean {
  const curve = curveOf(task.ground);
  const design = designOf(task, places);
  return design.pegs.every(
    (peg, i) =>
      Math.abs(peg.x) <= pegRanges.x.max &&
      Math.abs(peg.y) <= pegRanges.y.max &&
      obstacle(curve, peg, others(design, i)) === '',
  );
}

/** Bone between a peg and the edge of the back, mm. */
export function wallOf(ground: Ground, { x, y, diameter }: PegPlace): number {
  const edge = outlineLine(curveOf(ground));
  const away = edge.map((from, i) => {
    const to = edge[(i + 1) % edge.length] ?? from;
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    const along = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy);
    const share = Math.max(0, Math.min(1, along));
    return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
  });
  return Math.min(...away) - diameter / 2;
}

/** The edge of the back moved inward, mm: pegs that keep a wall stand inside it. */
export function wallLine(ground: Ground, wall: number): readonly Point[] {
  const edge = outlineLine(curveOf(ground));
  return edge.map((at, i) => {
    const before = edge.at(i - 1) ?? at;
    const after = edge[(i + 1) % edge.length] ?? at;
    const [dx, dy] = [after.x - before.x, after.y - before.y];
    const length = Math.hypot(dx, dy);
    return { x: at.x - (wall * dy) / length, y: at.y + (wall * dx) / length };
  });
}

const tenth = (value: number): number => Number(value.toFixed(1)) || 0;
