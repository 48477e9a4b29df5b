import type { Range } from '../../shared/range.ts';
import { mm, fixedText } from '../../shared/format.ts';
import { limitsOf } from './pair-limits.ts';
import { pairRanges, type Held, type PairField, type PairSetting } from './pair-ranges.ts';

export const fieldNames: Readonly<Record<PairField, string>> = {
  ballDiameter: 'ball diameter',
  radius: 'socket’s radius of curvature',
  mismatch: 'radial mismatch',
  width: 'width',
  depth: 'depth',
  arc: 'arc',
};

/** A control's value with its unit: "28.0 mm", "62.5°". */
export function valueText(field: PairField, value: number): string {
  return field === 'arc' ? `${fixedText(value, 1)}°` : mm(value, pairRanges[field].digits);
}

/**
 * Why a value could not be had, and where it was set instead.
 *
 * @param setting with the field already at the nearest allowed value
 */
export function refusal(setting: PairSetting, field: PairField, asked: number): string {
  const set = `The ${fieldNames[field]} is set to ${valueText(field, setting[field])}.`;
  const { min, max } = pairRanges[field];
  if (!(asked >= min && asked <= max)) {
    return `This control goes from ${min} to ${valueText(field, max)}. ${set}`;
  }
  return `${reasonFor(setting, field, asked > setting[field])} ${set}`;
}

/**
 * Why a control stands at an end nearer than its own: the others hold it there.
 *
 * @returns undefined where it stands elsewhere, or at an end of its own
 */
export function stopReason(
  setting: PairSetting,
  field: PairField,
  allowed: Range,
): string | undefined {
  const own = pairRanges[field];
  const value = setting[field];
  const isAtMost = value >= allowed.max && limitsOf(setting, field).max < own.max;
  const isAtLeast = value <= allowed.min && limitsOf(setting, field).min > own.min;
  if (!isAtMost && !isAtLeast) return undefined;
  return `Stops here. ${reasonFor(setting, field, isAtMost)}`;
}

/** That another control cannot say the present value, and where it stands instead. */
export function outOfReach(held: Held, present: number, reach: number): string {
  return (
    `The ${held} was ${valueText(held, present)}, and with it the cup would go round too much of a ball that fits. ` +
    `It is held at ${valueText(held, reach)}.`
  );
}

function reasonFor(setting: PairSetting, field: PairField, isTooMuch: boolean): string {
  const { ballDiameter, radius } = pairRanges;
  if (field === 'mismatch' || (field === 'radius' && !isTightFor(setting, isTooMuch))) {
    const isSmall = (field === 'mismatch') === isTooMuch;
    return isSmall
      ? `Beyond, the ball would be smaller than ${mm(ballDiameter.min)}.`
      : `Beyond, the ball would be larger than ${mm(ballDiameter.max)}.`;
  }
  if (field === 'ballDiameter' || field === 'radius') {
    return `Beyond, a socket of this ${setting.held} would be more than ${pairRanges.arc.max}° of so tight a curve.`;
  }
  const curve =
    setting.change === 'socket'
      ? `the curve of a ${mm(setting.ballDiameter, 1)} ball`
      : `a curve of ${mm(setting.radius, radius.digits)} radius`;
  return `Beyond, it would take more than ${pairRanges.arc.max}° of ${curve}.`;
}

/** Whether what a radius meets is the greatest arc, not the size of a ball. */
function isTightFor(setting: PairSetting, isTooMuch: boolean): boolean {
  const smallest = pairRanges.ballDiameter.min / 2 + setting.mismatch;
  return !isTooMuch && limitsOf(setting, 'radius').min > smallest;
}
