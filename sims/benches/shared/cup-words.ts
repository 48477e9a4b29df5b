import type { Range } from '../../shared/range.ts';
import {
  cupRanges,
  shapeNames,
  type CupField,
  type CupSetting,
  type ShapeBy,
} from './cup-ranges.ts';
import { tightestRadius } from './cup-limits.ts';

/**
 * Why a shape could not be had, and where it was set instead.
 *
 * @param setting with its shape already at the nearest allowed value
 * @param asked what was asked for, mm
 */
export function refusal(setting: CupSetting, asked: number): string {
  const { ballDiameter, width, shapeBy } = setting;
  const set = `The ${shapeNames[shapeBy]} is set to ${millimetres(setting[shapeBy])}.`;
  const range = cupRanges[shapeBy];
  if (asked < range.min || asked > range.max) {
    return `This control goes from ${range.min} to ${range.max} mm. ${set}`;
  }
  if (ballDiameter / 2 >= tightestRadius(width)) {
    return (
      `A ball of ${millimetres(ballDiameter)} would not reach the bottom of so tight a curve ` +
      `${millimetres(width)} wide. ${set}`
    );
  }
  return `A socket ${millimetres(width)} wide would be too deep with so tight a curve. ${set}`;
}

/**
 * Why a control stands at an end nearer than its own: the other settings hold it there.
 *
 * @param allowed as `allowedRange` gives it for the field
 * @param value where it stands
 * @returns undefined where the control stands elsewhere, or at an end of its own
 */
export function stopReason(
  setting: CupSetting,
  field: CupField,
  allowed: Range,
  value: number = setting[field],
): string | undefined {
  const own = cupRanges[field];
  const isAtLeast = value <= allowed.min && allowed.min > own.min;
  const isAtMost = value >= allowed.max && allowed.max < own.max;
  if (!isAtLeast && !isAtMost) return undefined;
  const beyond: CupSetting = {
    ...setting,
    [field]: isAtMost ? value + own.step : value - own.step,
  };
  return beyond.ballDiameter / 2 >= tightestRadius(beyond.width)
    ? 'Stops here: beyond, the ball would not reach the bottom of the cup.'
    : `Stops here: beyond, the cup would be deeper than ${cupRanges.depth.max} mm.`;
}

/** That another control cannot say the present shape, and where it stands instead. */
export function outOfReach(by: ShapeBy, present: number, reach: number): string {
  const was = Number.isFinite(present)
    ? millimetres(present)
    : 'without end, as the socket is flat';
  return `The ${shapeNames[by]} was ${was}; this control reaches ${millimetres(reach)} and stands there.`;
}

function millimetres(value: number): string {
  return `${Number(value.toFixed(1))} mm`;
}
