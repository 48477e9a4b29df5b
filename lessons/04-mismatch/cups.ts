import { pairAt, pairFrom, type Pair } from '../../sims/benches/two-curves/pair.ts';
import { defaultPair, type Held } from '../../sims/benches/two-curves/pair-ranges.ts';
import { peakStabilityRatio, rimContactTranslation } from '../../sims/geometry/index.ts';
import { factValue } from '../fact-value.ts';

/** The lesson's ball, and the width of its cup: those of the first two lessons. */
export const ballRadius = 24;
export const width = 28;

/** Radial mismatches the lesson keeps coming back to, mm. */
export const closeFit = 1;
export const common = factValue('mismatch-compromise-diametral') / 2;
export const looseFit = 6;
export const fits = [closeFit, common, looseFit] as const;

const start = pairFrom({
  ...defaultPair,
  ballDiameter: 2 * ballRadius,
  width,
  mismatch: closeFit,
}).setting;

/** The lesson's ball in a cup of its width, at a radial mismatch, mm. */
export const pairOf = (mismatch: number): Pair => pairAt(start, mismatch);

export const closePair = pairOf(closeFit);
export const commonPair = pairOf(common);
export const loosePair = pairOf(looseFit);

/** What a mismatch does to one pair. */
export interface Way {
  readonly name: string;
  readonly held: Held | 'cup';
  readonly pair: Pair;
  readonly play: number;
  readonly ratio: number;
}

function way(name: string, held: Way['held'], pair: Pair): Way {
  const { socket, ballRadius: radius } = pair;
  return {
    ...{ name, held, pair },
    play: rimContactTranslation(socket, radius),
    ratio: peakStabilityRatio(socket),
  };
}

export const before = way('Before', 'width', closePair);

/** The close pair made loose in every way there is: the socket flatter with one measure held, or the ball smaller. */
const opened = (held: Held): Pair =>
  pairAt({ ...start, held, [held]: closePair.shape[held] }, looseFit);
const smallerBall = pairAt(
  { ...start, change: 'ball', radius: closePair.socket.curvatureRadius },
  looseFit,
);
export const ways: readonly Way[] = [
  way('Width held', 'width', opened('width')),
  way('Depth held', 'depth', opened('depth')),
  way('Arc held', 'arc', opened('arc')),
  way('Smaller ball', 'cup', smallerBall),
];

/** What becomes of the largest push when the same ball and width get a flatter cup: from the shapes, not the formula's sign. */
export const openedOutcome: 'falls' | 'stays' | 'grows' = (() => {
  const change = peakStabilityRatio(commonPair.socket) / before.ratio - 1;
  if (Math.abs(change) < 1e-6) return 'stays';
  return change < 0 ? 'falls' : 'grows';
})();

/** By what share the ratio falls from the close pair to one made loose. */
export const lossOf = ({ ratio }: Way): number => 1 - ratio / before.ratio;
