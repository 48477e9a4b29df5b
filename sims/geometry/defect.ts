import { positive } from './numeric.ts';
import type { OutlineCurve } from './outline.ts';
import { polarRadius } from './polar-table.ts';

/**
 * How bone is missing at the rim.
 *
 * `cut`: a straight edge square to the direction, `depth` mm inward of the outline there; all bone outside it is gone.
 * `segment`: within half the `span` to either side of the direction the outer `depth` mm of every ray are gone, so the
 * new edge runs along with the outline and ends in two steps along rays.
 */
export type DefectKind = 'cut' | 'segment';

/** A rim defect. */
export interface Defect {
  /** Where, rad from anterior toward superior. */
  readonly direction: number;
  /** mm, inward from the outline along that direction. 0 is no defect at all. */
  readonly depth: number;
  readonly kind: DefectKind;
  /** Whole angle of a segment seen from the middle, rad; two hours of the clock (60°) where left out. */
  readonly span?: number | undefined;
}

/** A checked defect, nothing left out. */
export interface KnownDefect extends Defect {
  readonly span: number;
}

const USUAL_SPAN = Math.PI / 3;

/**
 * @returns the defect with its span, or undefined for one without depth
 * @throws RangeError for an unknown kind, a direction that is not finite, a depth that reaches the middle of the face,
 *   or a span above half a turn
 */
export function checkedDefect(defect: Defect, curve: OutlineCurve): KnownDefect | undefined {
  const { kind } = defect;
  if (!(['cut', 'segment'] as readonly unknown[]).includes(kind)) {
    throw new RangeError(`defect.kind is ${kind as string}; allowed: cut, segment`);
  }
  const { direction } = defect;
  if (!Number.isFinite(direction)) {
    throw new RangeError(
      `defect.direction is ${String(direction)}; allowed: any finite angle, rad`,
    );
  }
  const span = positive('defect.span', defect.span ?? USUAL_SPAN, 'rad (half a turn)', Math.PI);
  const greatest = reachOf(curve, kind, direction, span);
  const { depth } = defect;
  if (typeof depth !== 'number' || !(depth >= 0 && depth < greatest)) {
    throw new RangeError(
      `defect.depth is ${String(depth)}; allowed: 0 to below ${greatest} mm (the middle of the face)`,
    );
  }
  return depth === 0 ? undefined : { direction, depth, kind, span };
}

/** From the outline to the middle: along the direction for a cut, along the shortest ray for a segment. */
function reachOf(curve: OutlineCurve, kind: DefectKind, direction: number, span: number): number {
  if (kind === 'cut') return polarRadius(curve, direction).radius;
  const rays = 32;
  return Math.min(
    ...Array.from(
      { length: rays + 1 },
      (_, i) => polarRadius(curve, direction + span * (i / rays - 0.5)).radius,
    ),
  );
}

/** The angle from the defect's direction, rad, −π … π. */
export function angleFromDefect(defect: KnownDefect, angle: number): number {
  const turns = (angle - defect.direction) / (2 * Math.PI);
  return 2 * Math.PI * (turns - Math.round(turns));
}

/** Distance of a cut's edge from the middle, mm. */
export function cutDistance(defect: KnownDefect, curve: OutlineCurve): number {
  return polarRadius(curve, defect.direction).radius - defect.depth;
}
