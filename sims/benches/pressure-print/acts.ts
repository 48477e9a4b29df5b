import { fixedText, percent } from '../../shared/format.ts';
import { printOf, type Print } from './print.ts';
import { defaultPrint, type PrintSetting } from './setting.ts';

/** One setting of a demonstration: what it is called, and what it sets differently from the usual. */
export interface PrintAct {
  readonly text: string;
  readonly change: Partial<PrintSetting>;
}

/** Heads of the numbers of an act. */
export const ACT_COLUMNS = ['peak', 'near the rim'] as const;

/** What an act comes to, as it is written; on the edge of the rim there is no stress to tell. */
export function actCells({ change }: Pick<PrintAct, 'change'>): readonly string[] {
  return printCells(printOf({ ...defaultPrint, ...change }));
}

export function printCells({ contact }: Print): readonly string[] {
  const { state, peakPressure, rimShare } = contact;
  const peak = state === 'on the rim edge' ? 'edge' : `${fixedText(peakPressure, 0)}\u00a0MPa`;
  return [peak, percent(rimShare)];
}
