import { peakStabilityRatio, rimContactTranslation } from '../../geometry/index.ts';
import { mm, ratio } from '../../shared/format.ts';
import { mismatchLimits } from './pair-limits.ts';
import { pairAt, type Pair } from './pair.ts';
import { pairRanges } from './pair-ranges.ts';
import { valueText } from './pair-words.ts';

/** The two mismatches a sentence compares, mm, and how it calls them. */
interface Ends {
  readonly from: Pair;
  readonly to: Pair;
  readonly words: string;
}

/**
 * Why the curves go as they do for what is changed and what is held, with the numbers of this pair.
 *
 * @param now as the bench shows it
 */
export function whyWords(now: Pair): string {
  return [shapeWords(now, endsOf(now)), PRESSURE].join(' ');
}

const PRESSURE =
  'The further apart the two curves, the smaller the patch they touch over: the pressure rises in every case.';

function shapeWords({ setting, shape }: Pair, { from, to, words }: Ends): string {
  const [before, after] = [from.shape, to.shape];
  const falls = `the peak ratio falls from ${ratio(peakOf(from))} to ${ratio(peakOf(to))}`;
  const play = `from ${mm(playOf(from), 1)} to ${mm(playOf(to), 1)}`;
  const slower = `Play grows ${play}, ever less for each millimetre, as the arc shrinks.`;
  if (setting.change === 'ball') {
    return (
      `Only the ball changes, and the socket keeps width, depth and arc: to hold one or the other is the same. The peak ` +
      `stays ${ratio(peakOf(to))} and the depth ${mm(after.depth, 2)} whatever the mismatch. ${words} play grows in ` +
      `step with it, ${play}.`
    );
  }
  switch (setting.held) {
    case 'width':
      return (
        `The width stays ${mm(shape.width, 1)}, and over it a flatter curve rises less. ${words} the depth falls from ` +
        `${mm(before.depth, 2)} to ${mm(after.depth, 2)}, and that costs stability: ${falls}. ${slower}`
      );
    case 'depth':
      return (
        `The depth stays ${mm(shape.depth, 1)}; a flatter curve needs more width to reach it. ${words} the width grows ` +
        `from ${mm(before.width, 1)} to ${mm(after.width, 1)}, yet the arc shrinks from ${valueText('arc', before.arc)} ` +
        `to ${valueText('arc', after.arc)}, and ${falls}. ${slower}`
      );
    case 'arc':
      return (
        `The arc stays ${valueText('arc', shape.arc)}, and the peak ratio is the tangent of half of it: ` +
        `${ratio(peakOf(to))} whatever the mismatch. The price is size. ${words} the socket grows from ` +
        `${mm(before.width, 1)} wide and ${mm(before.depth, 2)} deep to ${mm(after.width, 1)} and ` +
        `${mm(after.depth, 2)}, and play in step with the mismatch, ${play}.`
      );
  }
}

/** From the least mismatch to the present one; to the greatest where the present one is the least. */
function endsOf(now: Pair): Ends {
  const { min, max } = mismatchLimits(now.setting);
  const least = pairAt(now.setting, min);
  const isApart = now.mismatch - min > pairRanges.mismatch.step / 2;
  const to = isApart ? now : pairAt(now.setting, max);
  const start = min === 0 ? 'no mismatch' : `${mm(min, 1)} of radial mismatch`;
  return {
    from: least,
    to,
    words: `From ${start} to ${isApart ? 'now' : `${mm(max, 1)} of it`}`,
  };
}

function peakOf({ socket }: Pair): number {
  return peakStabilityRatio(socket);
}

function playOf({ socket, ballRadius }: Pair): number {
  return rimContactTranslation(socket, ballRadius);
}
