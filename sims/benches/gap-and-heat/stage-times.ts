import { timeAbove, type CementHeat } from '../../mechanics/index.ts';

/** Setting that is shown in a run, s. */
export const runSpan = 1440;
/** What stands still is shown at about its hottest, s. */
export const stillTime = 360;
/** °C */
const HOT = 47;

/** The bone’s surface up to a moment: how hot it has been, °C, and how long above 47 °C, s. */
export function boneUntil(
  { histories: { times, bone } }: Pick<CementHeat, 'histories'>,
  time: number,
): { readonly highest: number; readonly above: number } {
  const count = times.findLastIndex((at) => at <= time) + 1;
  const temperatures = bone.subarray(0, count);
  return {
    highest: temperatures.reduce((most, here) => Math.max(most, here), -Infinity),
    above: count < 2 ? 0 : timeAbove({ times: times.subarray(0, count), temperatures }, HOT),
  };
}
