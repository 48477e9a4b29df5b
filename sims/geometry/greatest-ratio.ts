import type { Look } from './look.ts';

/** What is more than this share of the greatest ratio above it is worth finding. */
const WORTH = 1e-4;

/** And of ratios that stand nearly upright, what is more than this angle above it, rad. */
const WORTH_ANGLE = 2e-7;

/** More closer looks than any face of use asks for: of one that stands upright all over there would be no end. */
const MOST_LOOKS = 3000;

/** Looks this close, mm, show what a jump between them jumps to. */
const CLOSEST = 1e-6;

/** Share of the greatest ratio by which one may at most be higher between looks on one smooth stretch. */
const TRUSTED = 0.01;

/** Share of the greatest ratio by which the one between may lie off the straight line there. */
const TRUSTED_BEND = 0.004;

/**
 * The greatest stability ratio between the middle and the crest.
 *
 * The climb is the highest of the circles that the ball's centre runs on over every single place of the face. So its slope
 * may jump up, where the contact goes over to another place, but falls no faster than on such a circle. What it can have
 * been before a look is bounded by the ratio there; where that is above the greatest so far, there is a closer look.
 *
 * @param looks from the middle to the crest, rising
 */
export function greatestRatio(
  looks: readonly Look[],
  lookAt: (translation: number) => Look,
): number {
  let greatest = looks.reduce((most, { ratio }) => Math.max(most, ratio), -Infinity);

  let left = MOST_LOOKS;

  const note = (look: Look): Look => {
    left -= 1;
    greatest = Math.max(greatest, look.ratio);
    return look;
  };

  const lookBetween = (a: Look, b: Look): void => {
    const bound = mostBetween(a, b, greatest);
    const width = b.translation - a.translation;
    if (left <= 0 || width < CLOSEST || !isWorth(bound, greatest)) return;
    const jump = jumpBetween(a, b);
    const between = note(lookAt(jump ?? a.translation + width / 2));
    const isTrusted =
      bound <= greatest * (1 + TRUSTED) &&
      isOneStretch(a, between, b) &&
      bendOf(a, between, b) <= TRUSTED_BEND * greatest;
    if (isTrusted) {
      const top = topOf(a, between, b);
      if (top !== undefined) note(lookAt(top));
      return;
    }
    if (jump === undefined) {
      lookBetween(between, b);
      lookBetween(a, between);
      return;
    }
    // The guess is on one side of the jump: on the other it is not far.
    const isBefore = apart(between, a) < apart(between, b);
    const other = note(lookAt(jump + (isBefore ? NEAR : -NEAR) * width));
    lookBetween(isBefore ? other : between, b);
    lookBetween(isBefore ? between : other, isBefore ? other : between);
    lookBetween(a, isBefore ? between : other);
  };

  for (let i = looks.length - 1; i > 0; i--) lookBetween(looks[i - 1] as Look, looks[i] as Look);
  return greatest;
}

function isWorth(bound: number, greatest: number): boolean {
  if (bound <= greatest + WORTH * Math.abs(greatest)) return false;
  return greatest < STEEP || Math.atan(bound) - Math.atan(greatest) > WORTH_ANGLE;
}

/** Below this ratio the share decides alone: it is the narrower of the two. */
const STEEP = 100;

/** How near to each other the looks on the two sides of a jump are, as a share of the way they are taken from. */
const NEAR = 0.02;

/**
 * The greatest ratio there can have been between two looks. The contact that had it lifted the ball on its own circle, by
 * the second look no higher than it was found: so the ratio was at most that of the second look, `back` before it, on the
 * circle (first). And it lifted it from a place no lower than the first look's own circle (second). The first grows with
 * `back`; the second falls below it from some `back` on and from there is greatest at one of the two ends.
 */
function mostBetween(a: Look, b: Look, greatest: number): number {
  const width = b.translation - a.translation;
  const circle = TIGHTER * Math.min(a.section, b.section);
  const bend = ((1 + greatest * greatest) ** 1.5 / circle) * width;
  const mean = (b.height - a.height) / width;
  const room = mean - a.ratio + bend / 2;
  const gain = b.ratio - a.ratio + bend;
  const share = room <= 0 ? 0 : room < gain ? room / gain : 1;
  const sine = b.ratio === Infinity ? 1 : b.ratio / Math.sqrt(1 + b.ratio * b.ratio);
  const most = sine + (share * width) / circle;
  const first = most < 1 ? most / Math.sqrt(1 - most * most) : Infinity;
  return share === 1 ? first : Math.max(first, mean + bend / 2);
}

/** The circle of a contact between two looks may be somewhat tighter than theirs. */
const TIGHTER = 0.8;

/** Where the contact of one look hands over to that of the other, if it does and not close to either. */
function jumpBetween(a: Look, b: Look): number | undefined {
  const width = b.translation - a.translation;
  if (!(b.ratio > a.ratio) || b.ratio === Infinity) return undefined;
  const share = (b.ratio - (b.height - a.height) / width) / (b.ratio - a.ratio);
  return share > 2 * NEAR && share < 1 - 2 * NEAR ? a.translation + share * width : undefined;
}

const apart = (one: Look, other: Look): number => Math.hypot(one.x - other.x, one.y - other.y);

/** Whether the contact moves evenly from look to look, on the rim or off it all the way. */
function isOneStretch(a: Look, between: Look, b: Look): boolean {
  if (a.onRim !== between.onRim || b.onRim !== between.onRim) return false;
  const share = (between.translation - a.translation) / (b.translation - a.translation);
  if (Math.abs(share - 0.5) > AMID) return false;
  const offX = between.x - a.x - share * (b.x - a.x);
  const offY = between.y - a.y - share * (b.y - a.y);
  return Math.hypot(offX, offY) <= EVEN * apart(a, b) + CLOSEST;
}

/** How far from the middle the look between may be, as a share of the way. */
const AMID = 0.2;

/** Share of the contact's way. */
const EVEN = 0.1;

/** How far the ratio between two looks lies off the straight line from one to the other. */
function bendOf(a: Look, between: Look, b: Look): number {
  const share = (between.translation - a.translation) / (b.translation - a.translation);
  return Math.abs(between.ratio - a.ratio - share * (b.ratio - a.ratio));
}

/** Where a parabola through three looks is highest, if that is between them. */
function topOf(a: Look, between: Look, b: Look): number | undefined {
  const t1 = between.translation - a.translation;
  const t2 = b.translation - a.translation;
  const r1 = (between.ratio - a.ratio) / t1;
  const r2 = (b.ratio - a.ratio) / t2;
  const bend = (r1 - r2) / (t2 - t1);
  const top = (r1 / bend + t1) / 2;
  return bend > 0 && top > 0 && top < t2 ? a.translation + top : undefined;
}
