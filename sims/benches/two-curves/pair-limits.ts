import { pairRanges, type Held, type PairField, type PairSetting } from './pair-ranges.ts';

export interface Limits {
  readonly min: number;
  readonly max: number;
}

/** Half of the greatest arc, rad: no cup of these benches goes round more of its ball. */
const GREATEST_HALF_ARC = (pairRanges.arc.max * Math.PI) / 360;
const GREATEST_CHORD = 2 * Math.sin(GREATEST_HALF_ARC);
const GREATEST_SAGITTA = 1 - Math.cos(GREATEST_HALF_ARC);
const DEGREES = 180 / Math.PI;

const ballRadii: Limits = {
  min: pairRanges.ballDiameter.min / 2,
  max: pairRanges.ballDiameter.max / 2,
};

/** The radius that stays while the other changes, mm: the tightest curve the socket comes to is this one. */
export function stayingRadius({ change, ballDiameter, radius }: PairSetting): number {
  return change === 'socket' ? ballDiameter / 2 : radius;
}

/**
 * What one control may say while the others stay as they are, mm or degrees.
 *
 * The cup must have room for every mismatch from none up, so that its curves can be drawn from there: its arc may not pass
 * the greatest one at the tightest curve. A changing ball keeps to the sizes a ball may have.
 */
export function limitsOf(setting: PairSetting, field: PairField): Limits {
  const own = pairRanges[field];
  const staying = stayingRadius(setting);
  switch (field) {
    case 'width':
      return within(own, { max: staying * GREATEST_CHORD });
    case 'depth':
      return within(own, { max: staying * GREATEST_SAGITTA });
    case 'arc':
      return own;
    case 'ballDiameter':
      return within(own, { min: 2 * tightestRadius(setting) });
    case 'radius':
      return within(own, {
        min: Math.max(tightestRadius(setting), ballRadii.min + setting.mismatch),
        max: ballRadii.max + setting.mismatch,
      });
    case 'mismatch':
      return mismatchLimits(setting);
  }
}

/** The mismatches a setting has room for, mm. */
export function mismatchLimits({ change, radius }: PairSetting): Limits {
  if (change === 'socket') return pairRanges.mismatch;
  return within(pairRanges.mismatch, { min: radius - ballRadii.max, max: radius - ballRadii.min });
}

/** Smallest radius of curvature at which what is held stays within the greatest arc, mm. */
function tightestRadius({ held, width, depth }: PairSetting): number {
  if (held === 'width') return width / GREATEST_CHORD;
  return held === 'depth' ? depth / GREATEST_SAGITTA : 0;
}

/** Width (mm) of a socket of radius R (mm) that holds `value` (mm or degrees). */
export function widthHolding(held: Held, value: number, curvatureRadius: number): number {
  if (held === 'width') return value;
  if (held === 'depth') return 2 * Math.sqrt(value * (2 * curvatureRadius - value));
  return 2 * curvatureRadius * Math.sin(value / DEGREES / 2);
}

function within(own: Limits, limits: Partial<Limits>): Limits {
  const { min = own.min, max = own.max } = limits;
  return { min: Math.max(own.min, min), max: Math.min(own.max, max) };
}
