import {
  face,
  rimLine,
  rimPoint,
  type DefectKind,
  type Face,
  type Outline,
} from '../../geometry/index.ts';
import type { Range } from '../../shared/range.ts';
import { directionOfClock } from './bearing.ts';
import { rimRanges, type RimField } from './setting.ts';

export interface Limits {
  readonly min: number;
  readonly max: number;
}

/** The rim stands no steeper than this, rad: beyond, a hollow is hardly a socket and its ratios run off every scale. */
export const STEEPEST_RIM = (65 * Math.PI) / 180;

/** A defect leaves at least this much between itself and the middle, mm; a lip this much of the hollow. */
export const LEAST_LEFT = 2;

/** A segment's span: two hours. */
const SPAN = Math.PI / 3;
const RAYS = 24;
/** Shares of the width, inward of what the family of pears allows. */
const UPPER_SHARE = { least: 0.48, greatest: 0.97 } as const;
const STEP_SLACK = 1e-6;
/** So flat (mm) that any outline lies on it: for asking about the outline alone. */
const FLAT = 1e4;

/** A face with this outline and nothing else to it: what an outline's own measures are read from. */
export function outlineOnly(outline: Outline): Face {
  return face({ outline, curvatureRadiusAP: FLAT, curvatureRadiusSI: FLAT });
}

/** Upper widths a pear of a width may have, mm. */
export function upperWidthLimits(width: number): Limits {
  return { min: width * UPPER_SHARE.least, max: width * UPPER_SHARE.greatest };
}

/** Widest, or highest, that an outline may be on a radius, mm. */
export function chordLimit(radius: number): number {
  return 2 * radius * Math.sin(STEEPEST_RIM);
}

/** Least radius top to bottom on which an outline's rim keeps below {@link STEEPEST_RIM}, mm. */
export function leastRadiusSI(outline: Face): number {
  return outline.curve.halfHeight / Math.sin(STEEPEST_RIM);
}

/** The same front to back, for a radius top to bottom: a place (x, y) of the rim needs x²/Rx² + y²/Ry² ≤ sin². */
export function leastRadiusAP(outline: Face, radiusSI: number): number {
  const most = Math.sin(STEEPEST_RIM) ** 2;
  return Math.max(
    ...rimLine(outline).map(({ x, y }) => {
      const room = most - (y / radiusSI) ** 2;
      return room > 0 ? Math.abs(x) / Math.sqrt(room) : 0;
    }),
  );
}

/** Least radius, the same both ways, mm. */
export function leastRadius(outline: Face): number {
  const reach = Math.max(...rimLine(outline).map(({ x, y }) => Math.hypot(x, y)));
  return reach / Math.sin(STEEPEST_RIM);
}

/** Widest lip that leaves some of the hollow, mm. */
export function lipWidthLimit(outline: Face): number {
  return shortest(outline, 0, 2 * Math.PI) - LEAST_LEFT;
}

/** Deepest defect that leaves the middle, mm. */
export function defectDepthLimit(outline: Face, kind: DefectKind, clock: number): number {
  const direction = directionOfClock(clock);
  return shortest(outline, direction, kind === 'cut' ? 0 : SPAN) - LEAST_LEFT;
}

/** Shortest way from the middle to the rim within a span about a direction, mm. */
function shortest(outline: Face, direction: number, span: number): number {
  return Math.min(
    ...Array.from({ length: RAYS + 1 }, (_, i) => {
      const { x, y } = rimPoint(outline, direction + span * (i / RAYS - 0.5));
      return Math.hypot(x, y);
    }),
  );
}

/** The part of a control's range inside some limits, its ends moved inward to whole steps. */
export function within(field: RimField, limits: Partial<Limits>): Range {
  const range = rimRanges[field];
  const stepAt = (value: number, whole: (steps: number) => number): number =>
    Number((range.min + whole((value - range.min) / range.step) * range.step).toFixed(6));
  const min = Math.max(range.min, limits.min ?? range.min);
  const max = Math.min(range.max, limits.max ?? range.max);
  return {
    ...range,
    min: Math.min(
      range.max,
      stepAt(min, (steps) => Math.ceil(steps - STEP_SLACK)),
    ),
    max: Math.max(
      range.min,
      stepAt(max, (steps) => Math.floor(steps + STEP_SLACK)),
    ),
  };
}
