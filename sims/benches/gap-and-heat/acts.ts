import { fixedText } from '../../shared/format.ts';
import { heatOf } from './heat.ts';
import { mantlesOf } from './mantle.ts';
import { defaultGap, type GapSetting } from './settings.ts';

/** One setting of a demonstration: what it is called, and what it sets differently from the usual. */
export interface GapAct {
  readonly text: string;
  readonly change: Partial<GapSetting>;
}

/** Heads of the numbers of an act. */
export const ACT_COLUMNS = ['cement', 'bone, at most'] as const;

/** What an act comes to, as it is written. */
export function actCells({ change }: Pick<GapAct, 'change'>): readonly string[] {
  const mantles = mantlesOf({ ...defaultGap, ...change });
  const { measured } = mantles.setting;
  return gapCells(mantles[measured].cement, heatOf(mantles.setting, measured).peakAtBone);
}

/**
 * @param cement mm³
 * @param peak °C
 */
export function gapCells(cement: number, peak: number): readonly string[] {
  return [`${fixedText(cement / 1000, 1)}\u00a0cm³`, `${fixedText(peak, 0)}\u00a0°C`];
}
