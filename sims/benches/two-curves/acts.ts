import { pairFrom } from './pair.ts';
import { mm, ratio } from '../../shared/format.ts';
import { defaultTwoCurves, type TwoCurvesSetting } from './setting.ts';
import { shapeRow } from './sweep.ts';

/** One setting of a demonstration: what it is called, and what it sets differently from the usual. */
export interface CurvesAct {
  readonly text: string;
  readonly change: Partial<TwoCurvesSetting>;
}

/** Heads of the numbers of an act. */
export const ACT_COLUMNS = ['play', 'depth', 'peak ratio'] as const;

/** What an act comes to, as it is written: play, depth, peak ratio. */
export function actCells({ change }: Pick<CurvesAct, 'change'>): readonly string[] {
  const { play, depth, peakRatio } = shapeRow(pairFrom({ ...defaultTwoCurves, ...change }));
  return [mm(play, 1), mm(depth, 1), ratio(peakRatio)];
}
