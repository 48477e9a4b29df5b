import type { Range } from './contact-pressure-ranges.ts';
import {
  goTo,
  LOOKS,
  touchHeight,
  type BallOverFace,
  type Profile,
  type Ray,
} from './contact-pressure-spot.ts';

/** mm. Newton's steps smaller than this are done with. */
const PLACE_TOLERANCE = 1e-10;
const MOST_STEPS = 60;

/** A part of a ray, smooth from end to end. */
export interface RayPart extends Range {
  readonly onLip: boolean;
}

/** The smooth parts of a ray. */
export function partsOf({ lip, end }: Ray): readonly RayPart[] {
  const hollow = { from: 0, to: Math.max(0, lip), onLip: false };
  if (!(lip < end)) return [hollow];
  const onLip = { from: hollow.to, to: end, onLip: true };
  return hollow.to > 0 ? [hollow, onLip] : [onLip];
}

/** The height (mm) from which a ball that is let down first meets this ray. */
export function firstTouch(ball: BallOverFace, ray: Ray): number {
  let highest = -Infinity;
  for (const part of partsOf(ray)) {
    const { count, height } = profileAlong(ball, ray, part);
    for (let i = 0; i < count; i++) highest = Math.max(highest, height[i] ?? -Infinity);
  }
  return highest;
}

/** The stretches of a ray that a ball at this height presses. */
export function pressedParts(ball: BallOverFace, ray: Ray, level: number): readonly RayPart[] {
  const pressed: RayPart[] = [];
  for (const part of partsOf(ray)) {
    const { onLip } = part;
    const { count, at, height } = profileAlong(ball, ray, part);
    let from = NaN;
    for (let i = 0; i < count; i++) {
      const place = at[i] ?? NaN;
      const isIn = (height[i] ?? NaN) > level;
      const before = i > 0 && (height[i - 1] ?? NaN) > level;
      if (isIn && i === 0) from = place;
      else if (isIn && !before) from = crossing(ball, ray, onLip, at[i - 1] ?? NaN, place, level);
      else if (!isIn && before) {
        const to = crossing(ball, ray, onLip, place, at[i - 1] ?? NaN, level);
        if (to > from) pressed.push({ from, to, onLip });
      }
      if (isIn && i === count - 1 && place > from) pressed.push({ from, to: place, onLip });
    }
  }
  return pressed;
}

/** Looks along a part at even steps and at its peaks, so that none is missed however little of it is pressed. */
function profileAlong(ball: BallOverFace, ray: Ray, { from, to, onLip }: RayPart): Profile {
  const { profile } = ball;
  profile.count = 0;
  const step = (to - from) / LOOKS;
  let before = -Infinity;
  let here = heightAlong(ball, ray, from, onLip);
  for (let i = 0; i <= LOOKS; i++) {
    const place = from + step * i;
    const after = i < LOOKS ? heightAlong(ball, ray, place + step, onLip) : -Infinity;
    const isPeak = here >= before && here >= after && here > -Infinity;
    const low = i > 0 ? place - step : from;
    const high = i < LOOKS ? place + step : to;
    const peak = isPeak ? peakAlong(ball, ray, onLip, low, high, place) : place;
    if (peak < place) keep(profile, peak, heightAlong(ball, ray, peak, onLip));
    keep(profile, place, here);
    if (peak > place) keep(profile, peak, heightAlong(ball, ray, peak, onLip));
    before = here;
    here = after;
  }
  return profile;
}

function keep(profile: Profile, at: number, height: number): void {
  if (profile.count >= profile.at.length) return;
  profile.at[profile.count] = at;
  profile.height[profile.count] = height;
  profile.count++;
}

function heightAlong(ball: BallOverFace, ray: Ray, distance: number, onLip: boolean): number {
  goTo(ball, ray, distance, onLip);
  return touchHeight(ball);
}

/** How far the spot lies outward along the ray of the place under the ball's centre, mm. */
function ahead({ spot, cx, cy }: BallOverFace, { cosine, sine }: Ray): number {
  return (spot.x - cx) * cosine + (spot.y - cy) * sine;
}

/** The peak of the height of touch between two places, by Newton; the start where there is none. */
function peakAlong(
  ball: BallOverFace,
  ray: Ray,
  onLip: boolean,
  from: number,
  to: number,
  start: number,
): number {
  const { spot } = ball;
  const { cosine, sine } = ray;
  let [low, high, place] = [from, to, start];
  for (let i = 0; i < MOST_STEPS; i++) {
    const height = heightAlong(ball, ray, place, onLip);
    const root = height - spot.z;
    const out = ahead(ball, ray);
    const slope = spot.zx * cosine + spot.zy * sine - out / root;
    const bend =
      spot.zxx * cosine * cosine +
      2 * spot.zxy * cosine * sine +
      spot.zyy * sine * sine -
      (1 + (out / root) ** 2) / root;
    if (slope > 0) low = place;
    else high = place;
    // Still rising at the end of the part: that is its peak.
    if (low >= to || high <= from) return place;
    const newton = place - slope / bend;
    const next = bend < 0 && newton > low && newton < high ? newton : (low + high) / 2;
    if (!(Math.abs(next - place) > PLACE_TOLERANCE)) break;
    place = next;
  }
  return place;
}

/** Where the height of touch passes a level between a place below it and one above, by Newton. */
function crossing(
  ball: BallOverFace,
  ray: Ray,
  onLip: boolean,
  below: number,
  above: number,
  level: number,
): number {
  const { spot } = ball;
  let [under, over, place] = [below, above, above];
  for (let i = 0; i < MOST_STEPS; i++) {
    const height = heightAlong(ball, ray, place, onLip);
    if (height > level) over = place;
    else under = place;
    const slope = spot.zx * ray.cosine + spot.zy * ray.sine - ahead(ball, ray) / (height - spot.z);
    const newton = place - (height - level) / slope;
    const isBetween = newton > Math.min(under, over) && newton < Math.max(under, over);
    const next = isBetween ? newton : (under + over) / 2;
    const isThere = !(Math.abs(next - place) > PLACE_TOLERANCE);
    place = next;
    if (isThere) break;
  }
  return place;
}
