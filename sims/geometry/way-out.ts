import type { ContactSearch } from './contact-search.ts';
import { remainingRadius } from './face-shape.ts';
import { settle } from './face-contact.ts';
import { greatestRatio } from './greatest-ratio.ts';
import { pressedOut } from './pressed-out.ts';
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

/** What the looks along the way found. */
interface WaySamples {
  readonly translations: readonly number[];
  readonly height: Float64Array;
  readonly ratio: Float64Array;
  /** 1 where the contact is on the rim. */
  readonly onRim: Uint8Array;
}

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
  const samples = lookAlong(search, translations);
  const ratioAt = (translation: number): number => {
    settle(search, translation);
    return search.ratio;
  };
  const crest = crestOf(search, samples, ratioAt);
  const rim = Math.min(rimContactOf(search, samples), crest.translation);
  const peak = greatestRatio(translations, samples.ratio, rim, crest.translation, ratioAt);
  return {
    peakStabilityRatio: Math.max(0, peak),
    rimContactTranslation: rim,
    depth: crest.height - (samples.height[0] as number),
    dislocationTranslation: crest.translation,
  };
}

function lookAlong(search: ContactSearch, translations: readonly number[]): WaySamples {
  const count = translations.length;
  const height = new Float64Array(count);
  const ratio = new Float64Array(count);
  const onRim = new Uint8Array(count);
  for (let i = 0; i < count; i++) {
    settle(search, translations[i] as number);
    height[i] = search.height;
    ratio[i] = search.ratio;
    onRim[i] = search.onRim ? 1 : 0;
  }
  return { translations, height, ratio, onRim };
}

/** The highest place of the climb: the best of the places where the slope falls through zero, and of the middle. */
function crestOf(
  search: ContactSearch,
  { translations, height, ratio }: WaySamples,
  ratioAt: (translation: number) => number,
): { readonly translation: number; readonly height: number } {
  let translation = 0;
  let highest = height[0] as number;
  for (let i = 0; i + 1 < translations.length; i++) {
    const from = ratio[i] as number;
    const to = ratio[i + 1] as number;
    if (!(from > 0 && to <= 0)) continue;
    const a = translations[i] as number;
    const b = translations[i + 1] as number;
    const top = signChange(ratioAt, a, from, b, to, SOLVED);
    settle(search, top);
    if (search.height > highest) {
      translation = top;
      highest = search.height;
    }
  }
  return { translation, height: highest };
}

/**
 * Where the contact first comes to the rim. Inside a bare sphere it moves straight outward, R/(R − r) as fast as the ball.
 */
function rimContactOf(search: ContactSearch, { translations, onRim }: WaySamples): number {
  const first = onRim.indexOf(1);
  if (first < 0) return Infinity;
  if (first === 0) return 0;
  if (search.hollowDecides)
    return (1 - search.kx * search.r) * remainingRadius(search.face, search.angle);
  const pressed = (translation: number): number => {
    settle(search, translation);
    // Inside, the share of the way to the rim that is left.
    return search.onRim ? Math.max(0, pressedOut(search)) : Math.min(0, search.inside);
  };
  const a = translations[first - 1] as number;
  const b = translations[first] as number;
  return signChange(pressed, a, pressed(a), b, pressed(b), SOLVED);
}
