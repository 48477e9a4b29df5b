import type { Ingrowth } from '../../mechanics/index.ts';
import { fixedText } from '../../shared/format.ts';
import { runOf } from './run.ts';
import { defaultWeek, MICROMETRES, WEEKS, type WeekSetting } from './settings.ts';

/** One half year of a demonstration: what it is called, what is set, and how it ends. */
export interface WeekAct {
  readonly text: string;
  readonly setting: WeekSetting;
  readonly end: WeekEnd;
}

export interface WeekEnd {
  /** Of the space that moves most, in the first week that is loaded, mm */
  readonly motion: number;
  /** Of the spaces, in the end */
  readonly share: number;
}

/** All weeks go by in fewer seconds than five. */
export const STAGE_PACE = WEEKS / 4.5;

export function endOf({ rest }: Pick<WeekSetting, 'rest'>, { weeks, share }: Ingrowth): WeekEnd {
  return { motion: weeks[rest]?.motion ?? 0, share };
}

/** An act with its end computed; it begins before the first week. */
export function weekAct(text: string, change: Partial<WeekSetting>): WeekAct {
  const setting = { ...defaultWeek, week: 0, ...change };
  return { text, setting, end: endOf(setting, runOf(setting)) };
}

/** Heads of the columns of {@link cellsOf}. */
export const weekColumns = ['moves, µm', 'bone, %'] as const;

/** Two cells: motion in µm, and how much of the spaces is bone in per cent. */
export function cellsOf({ motion, share }: WeekEnd): readonly [string, string] {
  const moved = Number.isFinite(motion) ? fixedText(motion * MICROMETRES, 0) : '–';
  return [moved, fixedText(100 * share, 0)];
}
