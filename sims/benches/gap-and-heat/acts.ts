import { fixedText } from '../../shared/format.ts';
import { heatOf } from './heat.ts';
import { mantlesOf } from './mantle.ts';
import { defaultGap, type GapSetting } from './settings.ts';
import { stillTime } from './stage-times.ts';

/** What an act comes to: cement, mm³; the highest temperature of the bone’s surface, °C; how long it is above 47 °C, s. */
export interface GapResult {
  readonly cement: number;
  readonly peak: number;
  readonly above: number;
}

/** One mantle of a demonstration: what it is called, what it sets differently from the usual, and what comes of it. */
export interface GapAct {
  readonly text: string;
  readonly change: Partial<GapSetting>;
  readonly result: GapResult;
}

/** The act of a bench as it stands; shown, if nothing runs, at its hottest. */
export const settingOf = ({ change }: Pick<GapAct, 'change'>): GapSetting => ({
  ...defaultGap,
  time: stillTime,
  ...change,
});

/** An act with its numbers computed. */
export function gapAct(text: string, change: Partial<GapSetting>): GapAct {
  const mantles = mantlesOf(settingOf({ change }));
  const { measured } = mantles.setting;
  const { peakAtBone, timeAbove47 } = heatOf(mantles.setting, measured);
  return {
    text,
    change,
    result: { cement: mantles[measured].cement, peak: peakAtBone, above: timeAbove47 },
  };
}

/** Heads of the numbers of an act. */
export const ACT_COLUMNS = ['cement, cm³', 'bone, °C', 'min over 47'] as const;

/** The numbers of an act, as they are written. */
export function gapCells({ cement, peak, above }: GapResult): readonly string[] {
  return [
    fixedText(cement / 1000, 2),
    fixedText(peak, 1),
    above === 0 ? '0' : fixedText(above / 60, 1),
  ];
}
