import type { PrintAct } from '../../sims/benches/pressure-print/acts.ts';
import type { CurvesAct } from '../../sims/benches/two-curves/acts.ts';
import type { Held } from '../../sims/benches/two-curves/pair-ranges.ts';
import { countingOnly, defaultCurves } from '../../sims/benches/two-curves/setting.ts';
import { ballRadius, closeFit, closePair, looseFit, width } from './cups.ts';
import { layer, load, slid } from './presses.ts';

const close = countingOnly({
  ...defaultCurves,
  ballDiameter: 2 * ballRadius,
  width,
  mismatch: closeFit,
});

const opened = (held: Held): CurvesAct['change'] => ({
  ...close,
  ...closePair.shape,
  held,
  mismatch: looseFit,
  kept: close,
});

/** The curves of the lecture, one a press. */
export const curvesActs: readonly CurvesAct[] = [
  { text: 'close', change: close },
  { text: 'width held', change: opened('width') },
  { text: 'depth held', change: opened('depth') },
  { text: 'arc held', change: opened('arc') },
];

const usual = { ballDiameter: 2 * ballRadius, width, held: 'width', load, ...layer } as const;

/** The prints of the lecture, one a press. */
export const printActs: readonly PrintAct[] = [
  { text: 'loose, middle', change: { ...usual, mismatch: looseFit, translation: 0 } },
  { text: 'close, middle', change: { ...usual, mismatch: closeFit, translation: 0 } },
  { text: 'close, aside', change: { ...usual, mismatch: closeFit, translation: slid } },
  { text: 'loose, aside', change: { ...usual, mismatch: looseFit, translation: slid } },
];
