import type { ContactSearch } from './contact-search.ts';
import { remainingRadius } from './face-shape.ts';
import { settle } from './face-contact.ts';
import { greatestRatio } from './greatest-ratio.ts';
import { pressedOut } from './pressed-out.ts';
import { lookAt, type Look } from './look.ts';
import { signChange } from './sign-change.ts';

/** What the ball meets on its way from the middle of a face outward in one direction. */
export interface WayOut {
  /** Greatest slope of the climb up to its highest place; 0 where it never rises. */
  readonly peakStabilityRatio: number;
  /** Translation at which the rim is first touched, mm. */
  readonly rimContactTranslation: number;
  /** Climb at its highest place, mm, and the translation there. */
  readonly depth: number;
  readonly dislocationTranslation: number;
}

/** Translations are solved to this, mm. */
const SOLVED = 1e-8;

/** Translation beyond which every contact in the direction of the search lies behind the ball's centre, mm. */
export function reachOf(search: ContactSearch): number {
  const { x, y } = search.face.rim;
  const { ux, uy } = search;
  let reach = 0;
  for (let i = 0; i < x.length; i++) {
    reach = Math.max(reach, (x[i] as number) * ux + (y[i] as number) * uy);
  }
  // The rim bulges between two places, by half the square of half a degree at most.
  return reach * (1 + 2e-4);
}

/**
 * Follows the ball outward in the direction of the search: `translations` rising from 0 to the reach are looked at, and
 * what happens between them is solved for.
 */
export function wayOut(search: ContactSearch, translations: readonly number[]): WayOut {
  const looks = translations.map((translation) => lookAt(search, translation));
  const crest = crestOf(search, looks);
  const rim = Math.min(rimContactOf(search, looks), crest.translation);
  const onWay = [
    ...looks.filter(({ translation }) => translation < crest.translation),
    crest,
    ...(rim > 0 && rim < crest.translation ? [lookAt(search, rim)] : []),
  ].sort((a, b) => a.translation - b.translation);
  const peak = greatestRatio(onWay, (translation) => lookAt(search, translation));
  return {
    peakStabilityRatio: Math.max(0, peak),
    rimContactTranslation: rim,
    depth: crest.height - (looks[0]?.height ?? NaN),
    dislocationTranslation: crest.translation,
  };
}

/** The highest place of the climb: the best of the places where the slope falls through zero, and of the middle. */
function crestOf(search: ContactSearch, looks: readonly Look[]): Look {
  const ratioAt = (translation: number): number => {
    settle(search, translation);
    return search.ratio;
  };
  let best = looks[0] as Look;
  for (let i = 0; i + 1 < looks.length; i++) {
    const a = looks[i] as Look;
    const b = looks[i + 1] as Look;
    if (!(a.ratio > 0 && b.ratio <= 0)) continue;
    const { translation: from } = a;
    const top = signChange(ratioAt, from, a.ratio, b.translation, b.ratio, SOLVED);
    const there = lookAt(search, top);
    if (there.height > best.height) best = there;
  }
  return best;
}

/**
 * Where the contact first comes to the rim. Inside a bare sphere it moves straight outward, R/(R − r) as fast as the ball.
 */
function rimContactOf(search: ContactSearch, looks: readonly Look[]): number {
  const first = looks.findIndex(({ onRim }) => onRim);
  if (first < 0) return Infinity;
  if (first === 0) return 0;
  if (search.hollowDecides)
    return (1 - search.kx * search.r) * remainingRadius(search.face, search.angle);
  const pressed = (translation: number): number => {
    settle(search, translation);
    // Inside, the share of the way to the rim that is left.
    return search.onRim ? Math.max(0, pressedOut(search)) : Math.min(0, search.inside);
  };
  const a = looks[first - 1]?.translation ?? NaN;
  const b = looks[first]?.translation ?? NaN;
  return signChange(pressed, a, pressed(a), b, pressed(b), SOLVED);
}
