import { fixedText } from '../../shared/format.ts';
import { figures } from './lettering.ts';
import type { StripSetting } from './settings.ts';
import { stripOf, type Strip } from './strip.ts';

/** One strip of a demonstration: what it is called, how it is set, and what follows. */
export interface StripAct {
  readonly text: string;
  readonly setting: StripSetting;
  readonly strip: Strip;
}

/** An act with its numbers computed. */
export function stripAct(text: string, setting: StripSetting): StripAct {
  return { text, setting, strip: stripOf(setting) };
}

/** Heads of the columns of {@link cellsOf}. */
export const stripColumns = ['left, MPa', 'right, MPa', 'times mean'] as const;

/** Shear at the two ends of the joint, MPa. */
export function endsOf({ shear }: Pick<Strip, 'shear'>): readonly [left: number, right: number] {
  return [shear.shear[0]?.stress ?? NaN, shear.shear.at(-1)?.stress ?? NaN];
}

/** Three cells: shear at the left end and at the right one in MPa, and the greater over the mean. */
export function cellsOf(strip: Strip): readonly [string, string, string] {
  const [left, right] = endsOf(strip);
  return [endText(left), endText(right), fixedText(strip.shear.peakToMean, 1)];
}

/** Less than a hundredth is as good as nothing beside the peaks. */
const endText = (stress: number): string => (stress < 0.1 ? fixedText(stress, 2) : figures(stress));
