import type { BallPathRow } from './ball-path.ts';
import { positive } from './numeric.ts';
import { evenlyTo, listOf, type CountOrList } from './translations.ts';

/** A place on a profile: x along the plane looked at, z out of the socket, mm. */
export interface ProfilePoint {
  readonly x: number;
  readonly z: number;
}

/** One row of the path over a profile. */
export interface ProfilePathRow extends BallPathRow {
  /** Where the ball touches. */
  readonly contact: ProfilePoint;
}

/**
 * The path of a ball's centre over a profile of any shape, in a plane, without friction.
 *
 * The profile is a polyline: its corners and its straight pieces may be touched, so a flat of two points is exact. A ball
 * larger than a hollow bridges it, on two contacts. The centre's height is h(x) = max over the profile of
 * z + √(r² − (x − x_i)²); on a straight piece of slope tan α that is reached r sin α ahead of the centre.
 *
 * @param profile two points and more, x rising, mm; its ends are rims, beyond which there is nothing
 * @param ballRadius mm
 * @param translations mm along x, either side of 0; or a number of rows, from 3, evenly from 0 to the profile's last x
 * @returns a row for each translation in the order given. `climb` is measured from translation 0. `stabilityRatio` is the
 *   slope of the path taken from the contact, tan of the tilt of the normal there, positive where the ball climbs outward:
 *   to the right at 0 and beyond, to the left for negative translations. Of two contacts at once the one that resists
 *   outward motion counts. Past the highest place the ratio is negative: the ball runs off by itself
 * @throws RangeError for a profile with fewer than two points, one that does not rise in x or is not finite, a ball that
 *   is not finite and positive, or a translation (0 included) at which the ball does not stand over the profile
 */
export function profilePath(
  profile: readonly ProfilePoint[],
  ballRadius: number,
  translations: CountOrList,
): readonly ProfilePathRow[] {
  const ends = checkedEnds(profile);
  const r = positive('ballRadius', ballRadius, 'mm');
  const list = listOf('translations', translations, 3, evenlyTo(ends.last));
  const least = ends.first - r;
  const greatest = ends.last + r;
  for (const translation of [0, ...list]) {
    if (translation >= least && translation <= greatest) continue;
    throw new RangeError(
      `translations is ${translation}; allowed: ${least} to ${greatest} mm, where the ball stands over the profile`,
    );
  }
  const rest = settleOn(profile, r, 0).height;
  return list.map((translation) => {
    const { height, slope, contact } = settleOn(profile, r, translation);
    // 0 + … turns a slope of −0 into 0.
    const stabilityRatio = 0 + (translation < 0 ? -slope : slope);
    return { translation, climb: height - rest, stabilityRatio, contact };
  });
}

function checkedEnds(profile: readonly ProfilePoint[]): {
  readonly first: number;
  readonly last: number;
} {
  const first = profile[0];
  const last = profile[profile.length - 1];
  if (profile.length < 2 || first === undefined || last === undefined) {
    throw new RangeError(`profile has ${profile.length} points; allowed: 2 and more`);
  }
  profile.forEach(({ x, z }, i) => {
    const before = profile[i - 1]?.x ?? -Infinity;
    if (!Number.isFinite(x) || !(x > before)) {
      throw new RangeError(
        `profile[${i}].x is ${String(x)}; allowed: finite values above ${before} mm (x must rise)`,
      );
    }
    if (!Number.isFinite(z)) {
      throw new RangeError(`profile[${i}].z is ${String(z)}; allowed: finite values, mm`);
    }
  });
  return { first: first.x, last: last.x };
}

interface Settled {
  /** Of the ball's centre, less its radius. */
  readonly height: number;
  /** By which the centre rises to the right. */
  readonly slope: number;
  readonly contact: ProfilePoint;
}

/** Heights as near as this, as a share of the ball's radius, are level. */
const LEVEL = 1e-12;

/** Lets the ball down on the profile: the highest of all contacts, of level ones the most resisting. */
function settleOn(profile: readonly ProfilePoint[], r: number, translation: number): Settled {
  const side = translation < 0 ? -1 : 1;
  let height = -Infinity;
  let slope = 0;
  let contact: ProfilePoint = { x: 0, z: 0 };
  const offer = (newHeight: number, newSlope: number, x: number, z: number): void => {
    if (newHeight < height - LEVEL * r) return;
    if (newHeight <= height + LEVEL * r && side * newSlope <= side * slope) return;
    height = newHeight;
    slope = newSlope;
    contact = { x, z };
  };
  let before: ProfilePoint | undefined;
  for (const point of profile) {
    if (before !== undefined) offerPiece(before, point, r, translation, offer);
    before = point;
    const ahead = point.x - translation;
    if (Math.abs(ahead) > r) continue;
    const drop = Math.sqrt(r * r - ahead * ahead);
    // r − √(r² − d²) without the loss of digits.
    offer(point.z - (ahead * ahead) / (r + drop), ahead / drop, point.x, point.z);
  }
  return { height, slope, contact };
}

/** Offers the contact between two points, where the straight piece is tangent to the ball. */
function offerPiece(
  from: ProfilePoint,
  to: ProfilePoint,
  r: number,
  translation: number,
  offer: (height: number, slope: number, x: number, z: number) => void,
): void {
  const slope = (to.z - from.z) / (to.x - from.x);
  const secant = Math.hypot(1, slope);
  const x = translation + (r * slope) / secant;
  if (!(x > from.x && x < to.x)) return;
  const z = from.z + slope * (x - from.x);
  const fall = (r * slope * slope) / (secant * (1 + secant));
  offer(z - fall, slope, x, z);
}
