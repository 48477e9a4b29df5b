import type { Point } from '../../figures/view.ts';
import type { OutlineCurve } from '../../geometry/outline.ts';
import { isInside } from './outline.ts';
import type { Design, KeelPlace, PegPlace } from './settings.ts';

/** What stands on the back keeps this far from its edge, and from the next, mm. */
export const EDGE = 1;
export const BETWEEN = 1;

const ROUND_POINTS = 24;
const SEARCH_STEP = 0.1;
const SEARCH_DIRECTIONS = 40;
const FARTHEST = 60;

/** A peg’s or a keel’s footprint in plan, mm. */
type Foot =
  Pick<PegPlace, 'x' | 'y' | 'diameter'> | Pick<KeelPlace, 'x' | 'y' | 'span' | 'thickness'>;

/** Whether a footprint lies on the back, clear of its edge. */
export function isOnBack(curve: OutlineCurve, foot: Foot): boolean {
  return edgeOf(foot).every((at) => isInside(curve, at));
}

/** How far two footprints lie apart, mm; below 0 where they overlap. */
export function clearance(a: Foot, b: Foot): number {
  if ('diameter' in a && 'diameter' in b) {
    return Math.hypot(a.x - b.x, a.y - b.y) - (a.diameter + b.diameter) / 2;
  }
  if ('diameter' in a) return 'diameter' in b ? 0 : fromKeel(b, a);
  return 'diameter' in b ? fromKeel(a, b) : -Infinity;
}

/** Why a footprint cannot stand there, in words; '' where it can. `others` by the names they go by. */
export function obstacle(
  curve: OutlineCurve,
  foot: Foot,
  others: readonly { readonly name: string; readonly foot: Foot }[],
): string {
  if (!isOnBack(curve, foot)) return 'the edge of the back';
  return others.find((other) => clearance(foot, other.foot) < BETWEEN - 1e-9)?.name ?? '';
}

/** The place nearest to a footprint’s own where it can stand, to a tenth of a millimetre; null where there is none. */
export function nearestPlace<Any extends Foot>(
  curve: OutlineCurve,
  foot: Any,
  others: readonly { readonly name: string; readonly foot: Foot }[],
): Any | null {
  const fits = (at: Any): boolean => obstacle(curve, at, others) === '';
  const own = { ...foot, x: tenth(foot.x), y: tenth(foot.y) };
  if (fits(own)) return own;
  for (let away = SEARCH_STEP; away <= FARTHEST; away += SEARCH_STEP) {
    for (let i = 0; i < SEARCH_DIRECTIONS; i++) {
      const turn = (2 * Math.PI * i) / SEARCH_DIRECTIONS;
      const x = tenth(foot.x + away * Math.cos(turn));
      const y = tenth(foot.y + away * Math.sin(turn));
      const at = { ...foot, x, y };
      if (fits(at)) return at;
    }
  }
  return null;
}

export const pegName = (index: number): string => `peg ${index + 1}`;
export const KEEL_NAME = 'the keel';

/** All that stands on the back but one of it. */
export function others(
  { pegs, keel }: Design,
  but: number | 'keel' | null,
): readonly { readonly name: string; readonly foot: Foot }[] {
  return [
    ...(keel === null || but === 'keel' ? [] : [{ name: KEEL_NAME, foot: keel }]),
    ...pegs.flatMap((foot, i) => (i === but ? [] : [{ name: pegName(i), foot }])),
  ];
}

/** A design with everything where it can stand, moved no further than it must; null where there is no room for it. */
export function fitted(curve: OutlineCurve, { pegs, keel }: Design): Design | null {
  let design: Design = { pegs: [], keel: null };
  if (keel !== null) {
    const at = nearestPlace(curve, keel, []);
    if (at === null) return null;
    design = { ...design, keel: at };
  }
  for (const peg of pegs) {
    const at = nearestPlace(curve, peg, others(design, null));
    if (at === null) return null;
    design = { ...design, pegs: [...design.pegs, at] };
  }
  return design;
}

/** Places on a footprint’s edge, a margin further out, mm. */
function edgeOf(foot: Foot): readonly Point[] {
  if ('diameter' in foot) {
    const radius = foot.diameter / 2 + EDGE;
    return Array.from({ length: ROUND_POINTS }, (_, i) => {
      const turn = (2 * Math.PI * i) / ROUND_POINTS;
      return { x: foot.x + radius * Math.cos(turn), y: foot.y + radius * Math.sin(turn) };
    });
  }
  const [a, b] = [foot.thickness / 2 + EDGE, foot.span / 2 + EDGE];
  return [1, -1].flatMap((right) =>
    [1, -1].map((up) => ({ x: foot.x + right * a, y: foot.y + up * b })),
  );
}

function fromKeel(
  keel: Pick<KeelPlace, 'x' | 'y' | 'span' | 'thickness'>,
  peg: Pick<PegPlace, 'x' | 'y' | 'diameter'>,
): number {
  const across = Math.max(0, Math.abs(peg.x - keel.x) - keel.thickness / 2);
  const along = Math.max(0, Math.abs(peg.y - keel.y) - keel.span / 2);
  return Math.hypot(across, along) - peg.diameter / 2;
}

const tenth = (value: number): number => Math.round(value * 10) / 10 || 0;
