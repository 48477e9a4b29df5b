import type { BallPathRow } from './ball-path.ts';
import { turnTo } from './contact-offer.ts';
import { contactSearch, type ContactSearch } from './contact-search.ts';
import { settle } from './face-contact.ts';
import type { Face } from './face.ts';
import { positive } from './numeric.ts';
import { evenlyTo, listOf, withoutGaps, type CountOrList } from './translations.ts';
import { reachOf, wayOut } from './way-out.ts';

/**
 * The path of a ball's centre over a face in one direction, without friction.
 *
 * The centre is held to a straight line over the face, through the middle in that direction, free to rise and fall; it
 * rests on the highest of all contacts, h = max over the surface of z + √(r² − dist²).
 *
 * @param ballRadius mm; may be larger than the radii of curvature, the ball then bridges the hollow
 * @param direction rad from anterior toward superior
 * @param translations mm, negative ones to the opposite side; or a number of rows, from 3, evenly from the middle to
 *   where the climb is highest
 * @returns a row for each translation in the order given: the climb from translation 0, and the stability ratio, which is
 *   the slope outward of the middle taken from the contact. Of two contacts at once the one that resists outward motion
 *   counts. Past the highest place the ratio is negative: the ball runs off by itself
 * @throws RangeError for a ball that is not finite and positive, a direction that is not finite, or a translation at which
 *   the ball is off the face
 */
export function pathOverFace(
  onFace: Face,
  ballRadius: number,
  direction: number,
  translations: CountOrList,
): readonly BallPathRow[] {
  positive('ballRadius', ballRadius, 'mm');
  if (!Number.isFinite(direction)) {
    throw new RangeError(`direction is ${String(direction)}; allowed: any finite angle, rad`);
  }
  const search = contactSearch(onFace, ballRadius);
  turnTo(search, direction);
  const end = typeof translations === 'number' ? crestOf(search) : 0;
  const list = listOf('translations', translations, 3, evenlyTo(end));
  settle(search, 0);
  const rest = search.height;
  return list.map((translation) => {
    turnTo(search, translation < 0 ? direction + Math.PI : direction);
    settle(search, Math.abs(translation));
    if (search.height === -Infinity || rest === -Infinity) {
      throw new RangeError(
        `translations is ${translation}; allowed: places where the ball is still over the face, mm`,
      );
    }
    return { translation, climb: search.height - rest, stabilityRatio: search.ratio };
  });
}

/** Where the climb is highest, mm. */
function crestOf(search: ContactSearch): number {
  return wayOut(search, withoutGaps([0], reachOf(search))).dislocationTranslation;
}
