import type { Range } from '../../shared/range.ts';
import { rimRanges, type RimField } from './setting.ts';

const upright = 'Stops here: beyond, the rim would stand nearly upright.';
const notConvex = 'Stops here: beyond, the pear would bend inward.';

const reasons: Partial<Record<RimField, string>> = {
  width: upright,
  height: upright,
  radiusAP: upright,
  radiusSI: upright,
  upperWidth: notConvex,
  lipWidth: 'Stops here: beyond, the lip would leave no hollow.',
  defectDepth: 'Stops here: beyond, the defect would reach the middle of the face.',
};

/**
 * Why a control stands at an end nearer than its own: the other settings hold it there.
 *
 * @returns undefined where it stands elsewhere, or at an end of its own
 */
export function stopReason(field: RimField, value: number, allowed: Range): string | undefined {
  const own = rimRanges[field];
  const isAtLeast = value <= allowed.min && allowed.min > own.min;
  const isAtMost = value >= allowed.max && allowed.max < own.max;
  return isAtLeast || isAtMost ? reasons[field] : undefined;
}
