import type { DirectionRow } from '../../../sims/geometry/index.ts';
import { denseContact, type OracleContact, type OracleFace } from './face-oracle.ts';

const evenly = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** A direction map by trying: many translations, all points at each, then more translations about the best. */
export function denseMap(
  face: OracleFace,
  ballRadius: number,
  directions: readonly number[],
): readonly DirectionRow[] {
  return directions.map((direction) => {
    const at = (t: number): OracleContact => denseContact(face, ballRadius, t, direction);
    // A little further than the furthest of a few places on the rim.
    const far =
      1.05 *
      Math.max(
        ...evenly(0, 2 * Math.PI, 181).map(
          (angle) => face.ray(angle).edge * Math.cos(angle - direction),
        ),
      );
    const looks = evenly(0, far, 80);
    const path = looks.map(at);
    const rest = (path[0] as OracleContact).height;
    const step = looks[1] as number;
    const crest = best(
      (t) => at(t).height,
      looks,
      path.map((contact) => contact.height),
      far,
      step,
    );
    const before = looks.filter((t) => t <= crest.at);
    // At rest the most resisting of level contacts counts: that of a ball a hair further out.
    const ratioAt = (t: number): number => at(Math.max(t, 1e-3)).ratio;
    const peak = best(ratioAt, before, before.map(ratioAt), crest.at, step);
    return {
      direction,
      peakStabilityRatio: peak.value,
      balanceStabilityAngle: Math.atan(peak.value),
      rimContactTranslation: firstOnRim((t) => at(Math.max(t, 1e-3)).share > 1 - 1e-4, looks),
      depth: crest.value - rest,
      dislocationTranslation: crest.at,
    };
  });
}

/** The best place of some, then of more and more about it. */
function best(
  of: (t: number) => number,
  looks: readonly number[],
  values: readonly number[],
  end: number,
  step: number,
): { readonly at: number; readonly value: number } {
  let value = Math.max(...values);
  let at = looks[values.indexOf(value)] ?? NaN;
  let width = step;
  for (let zoom = 0; zoom < 4; zoom++) {
    for (const t of evenly(Math.max(0, at - width), Math.min(end, at + width), 15)) {
      const there = of(t);
      if (there > value) {
        value = there;
        at = t;
      }
    }
    width /= 5;
  }
  return { at, value };
}

/** Where the contact first is on the rim, by halving between the looks. */
function firstOnRim(isOnRim: (t: number) => boolean, looks: readonly number[]): number {
  const first = looks.findIndex(isOnRim);
  if (first <= 0) return 0;
  let low = looks[first - 1] ?? 0;
  let high = looks[first] ?? 0;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (isOnRim(middle)) high = middle;
    else low = middle;
  }
  return high;
}
