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

/** Room that lines of lettering take, px. */
function sizeOf(lines: readonly string[], size: number): { width: number; height: number } {
  const longest = lines.reduce((most, { length }) => Math.max(most, length), 0);
  return { width: longest * size * LETTER, height: lines.length * size * LINE };
}

/**
 * Places the lines of every hold below, above, or beside it: where they cover no other hold and no other lines, nor
 * `keepOff`; else where they cover the least.
 */
export function placeLabels(
  { pegs, keel }: Design,
  linesOf: (which: number | 'keel') => readonly string[],
  view: View,
  size: number,
  keepOff: readonly Point[] = [],
): readonly HoldLabel[] {
  const feet: readonly { readonly which: number | 'keel'; readonly area: Area }[] = [
    ...pegs.map(({ x, y, diameter }, which) => ({
      which,
      area: around(view, { x, y }, diameter / 2, diameter / 2),
    })),
    ...(keel === null
      ? []
      : [{ which: 'keel' as const, area: around(view, keel, keel.thickness / 2, keel.span / 2) }]),
  ];
  const taken: Area[] = keepOff.map(({ x, y }) => ({
    left: x - 8,
    right: x + 8,
    top: y - 8,
    bottom: y + 8,
  }));
  return feet.map(({ which, area }) => {
    const lines = linesOf(which);
    const { width, height } = sizeOf(lines, size);
    const places = candidates(area, width, height);
    const others = [
      ...feet.filter((foot) => foot.which !== which).map((foot) => foot.area),
      ...taken,
    ];
    const covered = (place: Area): number =>
      others.reduce((sum, each) => sum + overlap(place, each), 0);
    const taking = places.reduce((least, each) =>
      covered(each) < covered(least) - 1e-6 ? each : least,
    );
    taken.push(taking);
    return { which, lines, x: (taking.left + taking.right) / 2, y: taking.top + size * 0.86 };
  });
}

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
