import type { Point, View } from '../../figures/view.ts';
import type { Design } from './settings.ts';

/** A few short lines at a peg or the keel, in pixels: where the middle of the first one stands. */
export interface HoldLabel {
  readonly which: number | 'keel';
  readonly lines: readonly string[];
  readonly x: number;
  readonly y: number;
}

interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const LETTER = 0.52;
const LINE = 1.08;
const GAP = 3;
/** Lines that cover less than this touch, px². */
const TOUCHING = 12;

/** Room that lines of lettering take, px. */
function sizeOf(lines: readonly string[], size: number): { width: number; height: number } {
  const longest = lines.reduce((most, { length }) => Math.max(most, length), 0);
  return { width: longest * size * LETTER, height: lines.length * size * LINE };
}

type LinesOf = (which: number | 'keel') => readonly string[];

/** A hold and the room it takes itself, px. */
interface Foot {
  readonly which: number | 'keel';
  readonly area: Area;
}

/**
 * Places the lines of every hold below, above, or beside it: where they cover no other hold and no other lines, nor
 * `keepOff`; else where they cover the least.
 */
export function placeLabels(
  design: Design,
  linesOf: LinesOf,
  view: View,
  size: number,
  keepOff: readonly Point[] = [],
): readonly HoldLabel[] {
  const feet = feetOf(design, view);
  const taken = keepOff.map(areaAround);
  return feet.map((foot) => {
    const lines = linesOf(foot.which);
    const { area } = leastCovering(foot, lines, size, feet, taken);
    taken.push(area);
    return labelAt(foot, lines, area, size);
  });
}

/**
 * The same where many may crowd: those that weigh most get their room first, and one that would cover something is cut
 * to its first line, if it has any weight, or left out. What is left out stands in the rows beside the drawing.
 */
export function placeClearLabels(
  design: Design,
  linesOf: LinesOf,
  view: View,
  size: number,
  keepOff: readonly Point[],
  weight: (which: number | 'keel') => number,
): readonly HoldLabel[] {
  const feet = feetOf(design, view);
  const taken = keepOff.map(areaAround);
  return [...feet]
    .sort((a, b) => weight(b.which) - weight(a.which))
    .flatMap((foot) => {
      const all = linesOf(foot.which);
      const cut = weight(foot.which) > 0 ? [all.slice(0, 1)] : [];
      for (const lines of [all, ...cut]) {
        const { area, covered } = leastCovering(foot, lines, size, feet, taken);
        if (covered > TOUCHING) continue;
        taken.push(area);
        return [labelAt(foot, lines, area, size)];
      }
      return [];
    });
}

function feetOf({ pegs, keel }: Design, view: View): readonly Foot[] {
  return [
    ...pegs.map(({ x, y, diameter }, which) => ({
      which,
      area: around(view, { x, y }, diameter / 2, diameter / 2),
    })),
    ...(keel === null
      ? []
      : [{ which: 'keel' as const, area: around(view, keel, keel.thickness / 2, keel.span / 2) }]),
  ];
}

/** Of the places about a hold the one where its lines cover the least, and how much that is, px². */
function leastCovering(
  { which, area }: Foot,
  lines: readonly string[],
  size: number,
  feet: readonly Foot[],
  taken: readonly Area[],
): { readonly area: Area; readonly covered: number } {
  const { width, height } = sizeOf(lines, size);
  const others = [
    ...feet.filter((foot) => foot.which !== which).map((foot) => foot.area),
    ...taken,
  ];
  const tried = candidates(area, width, height).map((place) => ({
    area: place,
    covered: others.reduce((sum, each) => sum + overlap(place, each), 0),
  }));
  return tried.reduce((least, each) => (each.covered < least.covered - 1e-6 ? each : least));
}

function labelAt(
  { which }: Foot,
  lines: readonly string[],
  { left, right, top }: Area,
  size: number,
): HoldLabel {
  return { which, lines, x: (left + right) / 2, y: top + size * 0.86 };
}

const areaAround = ({ x, y }: Point): Area => ({
  left: x - 8,
  right: x + 8,
  top: y - 8,
  bottom: y + 8,
});

function around(view: View, { x, y }: Point, half: number, high: number): Area {
  return {
    left: view.x(x - half),
    right: view.x(x + half),
    top: view.y(y + high),
    bottom: view.y(y - high),
  };
}

function candidates(area: Area, width: number, height: number): readonly [Area, ...Area[]] {
  const [x, y] = [(area.left + area.right) / 2, (area.top + area.bottom) / 2];
  const at = (left: number, top: number): Area => ({
    left,
    right: left + width,
    top,
    bottom: top + height,
  });
  return [
    at(x - width / 2, area.bottom + GAP),
    at(x - width / 2, area.top - GAP - height),
    at(area.right + GAP, y - height / 2),
    at(area.left - GAP - width, y - height / 2),
  ];
}

function overlap(a: Area, b: Area): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return across > 0 && down > 0 ? across * down : 0;
}
