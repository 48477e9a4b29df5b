import { percent, ratio } from '../../shared/format.ts';
import { megapascals } from '../two-curves/lettering.ts';
import type { PrintRow } from './curve.ts';
import type { CurveName } from './layout.ts';
import type { Print } from './print.ts';

/** How one of the curves is drawn and lettered. */
export interface CurveKind {
  readonly title: string;
  readonly of: (row: PrintRow) => number | null;
  readonly here: (print: Print) => number;
  readonly text: (value: number) => string;
  /** Number at a tick; as the scale's steps call for where it is left out. */
  readonly tick?: ((value: number) => string) | undefined;
  /** Upper end of the axis where it is always the same. */
  readonly most?: number;
}

export const curveKinds: Readonly<Record<CurveName, CurveKind>> = {
  ratio: {
    title: 'Stability ratio',
    of: ({ stabilityRatio }) => stabilityRatio,
    here: ({ elasticRatio }) => elasticRatio,
    text: (value) => ratio(value),
  },
  pressure: {
    title: 'Peak pressure, MPa',
    of: ({ peakPressure }) => peakPressure,
    here: ({ contact }) => contact.peakPressure,
    text: megapascals,
  },
  rimShare: {
    title: 'Load near the rim, %',
    of: ({ rimShare }) => rimShare,
    here: ({ contact }) => contact.rimShare,
    text: (value) => percent(value),
    tick: (value) => String(100 * value),
    most: 1,
  },
};
