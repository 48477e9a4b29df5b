import { turnTo } from './contact-offer.ts';
import { contactSearch } from './contact-search.ts';
import type { Face } from './face.ts';
import { positive } from './numeric.ts';
import { evenlyTo, listOf, withoutGaps, type CountOrList } from './translations.ts';
import { reachOf, wayOut, type WayOut } from './way-out.ts';

/** How firmly a face holds a ball in one direction. */
export interface DirectionRow extends WayOut {
  /** rad from anterior toward superior. */
  readonly direction: number;
  /** Arc tangent of the peak ratio, rad. */
  readonly balanceStabilityAngle: number;
}

/**
 * The direction map of a face: for every direction, what a ball meets on its way out.
 *
 * The ball's centre is held to a straight line over the face, from the middle in that direction, free to rise and fall:
 * the usual laboratory condition. It rests on the highest of all contacts, h = max over the surface of z + √(r² − dist²);
 * the climb is measured from translation 0, and the ratio is its slope, taken from the contact. On the way out
 *
 * - `dislocationTranslation` is where the climb is highest, `depth` the climb there;
 * - `peakStabilityRatio` is the greatest ratio up to there, `balanceStabilityAngle` its arc tangent;
 * - `rimContactTranslation` is where the ball first touches the rim that is left: 0 for one that conforms or bridges.
 *
 * Peak, rim contact and dislocation are solved for between the looks, so the numbers hardly depend on these.
 *
 * @param ballRadius mm; may be larger than the radii of curvature, the ball then bridges the hollow
 * @param options.directions rad from anterior toward superior, or a number of directions evenly round the face from 0
 * @param options.translations where to look, mm from 0 up, in any order; or a number of looks, from 3, evenly from the
 *   middle to the far side of the rim. Looks are added where they are more than a fortieth of that way apart; beyond the
 *   far side there is nothing to see
 * @returns a row for each direction, in the order given
 * @throws RangeError for a ball that is not finite and positive, or an empty, negative or not finite entry
 */
export function directionMap(
  onFace: Face,
  ballRadius: number,
  options: { readonly directions: CountOrList; readonly translations: CountOrList },
): readonly DirectionRow[] {
  positive('ballRadius', ballRadius, 'mm');
  const directions = listOf('directions', options.directions, 1, (i, n) => (2 * Math.PI * i) / n);
  const looks = listOf('translations', options.translations, 3, evenlyTo(1));
  const isCount = typeof options.translations === 'number';
  const sorted = isCount ? looks : risingFrom0(looks);
  const search = contactSearch(onFace, ballRadius);
  return directions.map((direction) => {
    turnTo(search, direction);
    const reach = reachOf(search);
    const asked = isCount ? looks.map((share) => share * reach) : sorted.filter((t) => t < reach);
    const way = wayOut(search, withoutGaps(asked, reach));
    return {
      direction,
      peakStabilityRatio: way.peakStabilityRatio,
      balanceStabilityAngle: Math.atan(way.peakStabilityRatio),
      rimContactTranslation: way.rimContactTranslation,
      depth: way.depth,
      dislocationTranslation: way.dislocationTranslation,
    };
  });
}

function risingFrom0(translations: readonly number[]): readonly number[] {
  const least = Math.min(...translations);
  if (least < 0) {
    throw new RangeError(`translations is ${least}; allowed: 0 to any larger finite value mm`);
  }
  return [...new Set([0, ...translations])].sort((a, b) => a - b);
}
