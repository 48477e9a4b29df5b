import { cupRanges, shapeNames, type CupSetting, type ShapeBy } from './cup-ranges.ts';
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
