import { LENGTH_TOLERANCE, positive } from './numeric.ts';
import {
  ELLIPSE_UPPER_SHARE,
  fullnessFor,
  GREATEST_UPPER_SHARE,
  LEAST_UPPER_SHARE,
  skewFor,
  widest,
} from './pear.ts';

/** Shape of a face seen en face. */
export type OutlineKind = 'circle' | 'ellipse' | 'pear';

/**
 * Outline of a face seen en face, in mm.
 *
 * A pear is the curve |x| = b(y), with η = y / (height/2) and
 *
 *     b = a √(1 − η²) (1 − kη + cη²)
 *
 * It has exactly the three measures: `height` from top to bottom, `width` as its widest chord (below the middle), and `upperWidth` as its chord at η = ½, halfway from the middle of the height to the top. Up to the chord an
 * ellipse has there, (√3/2) width, c is 0 and k follows from the ratio of the two widths; beyond that k is 0, the widest
 * chord is in the middle, and c follows. It is smooth all round, and convex as b is concave: 1/√2 ≥ k ≥ 0 and ½ ≥ c ≥ 0.
 */
export interface Outline {
  readonly kind: OutlineKind;
  /** Widest chord along x (front to back), mm. */
  readonly width: number;
  /** Along y (bottom to top), mm. May be left out for a circle, where it is the width. */
  readonly height?: number | undefined;
  /** Chord of a pear halfway between its middle and its top, mm; 0.8 of the width where left out. Read for a pear only. */
  readonly upperWidth?: number | undefined;
}

/** A checked outline, nothing left out: a circle or an ellipse has the upper chord that it has. */
export interface KnownOutline extends Outline {
  readonly height: number;
  readonly upperWidth: number;
}

/** An outline as a curve: x = a cos τ (1 − kη + cη²), y = (height/2) η with η = sin τ. */
export interface OutlineCurve {
  /** a, mm. */
  readonly breadth: number;
  /** Half the height, mm. */
  readonly halfHeight: number;
  /** k: how much wider below than above. */
  readonly skew: number;
  /** c: how much fuller than an ellipse. */
  readonly fullness: number;
}

/** Upper width of a pear over its width where none is given: the mean face of Iannotti 1992, from memory. */
const USUAL_UPPER_SHARE = 0.8;

/**
 * Checks an outline and fills in what was left out.
 *
 * @throws RangeError for lengths that are not finite and positive, a circle that is not as high as wide, or a pear whose
 *   upper width is below 0.476 or above 0.974 of its width: no convex curve of the family has these
 */
export function checkedOutline(outline: Outline): KnownOutline {
  const { kind } = outline;
  if (!(['circle', 'ellipse', 'pear'] as readonly unknown[]).includes(kind)) {
    throw new RangeError(`outline.kind is ${kind as string}; allowed: circle, ellipse, pear`);
  }
  const width = positive('outline.width', outline.width, 'mm');
  if (kind === 'circle') {
    const height = outline.height ?? width;
    if (!(Math.abs(height - width) <= width * LENGTH_TOLERANCE)) {
      throw new RangeError(
        `outline.height is ${String(height)}; allowed: ${width} mm (a circle is as high as it is wide)`,
      );
    }
    return { kind, width, height: width, upperWidth: width * ELLIPSE_UPPER_SHARE };
  }
  const height = positive('outline.height', outline.height ?? NaN, 'mm');
  if (kind === 'ellipse') return { kind, width, height, upperWidth: width * ELLIPSE_UPPER_SHARE };
  const upperWidth = outline.upperWidth ?? width * USUAL_UPPER_SHARE;
  const least = width * LEAST_UPPER_SHARE;
  const greatest = width * GREATEST_UPPER_SHARE;
  if (!Number.isFinite(upperWidth) || upperWidth < least || upperWidth > greatest) {
    throw new RangeError(
      `outline.upperWidth is ${String(upperWidth)}; allowed: ${least} to ${greatest} mm for a width of ${width} mm`,
    );
  }
  return { kind, width, height, upperWidth };
}

/** The curve of a checked outline. */
export function outlineCurve(outline: KnownOutline): OutlineCurve {
  const halfHeight = outline.height / 2;
  const share = outline.upperWidth / outline.width;
  const isPear = outline.kind === 'pear';
  const skew = isPear ? skewFor(share) : 0;
  const fullness = isPear ? fullnessFor(share) : 0;
  return { breadth: outline.width / 2 / widest(skew), halfHeight, skew, fullness };
}

/** Half of the chord at height y, mm; 0 above the top and below the bottom. */
export function halfChord(curve: OutlineCurve, y: number): number {
  const eta = y / curve.halfHeight;
  if (Math.abs(eta) >= 1) return 0;
  return (
    curve.breadth * Math.sqrt(1 - eta * eta) * (1 - curve.skew * eta + curve.fullness * eta * eta)
  );
}

/** Area inside the outline, mm²: (π/2) a height (1 + c/4), by integrating the chord. */
export function outlineArea(curve: OutlineCurve): number {
  return Math.PI * curve.breadth * curve.halfHeight * (1 + curve.fullness / 4);
}
