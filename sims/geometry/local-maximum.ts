const GOLDEN = (3 - Math.sqrt(5)) / 2;

/**
 * A local maximum of a function between `a` and `b`, by Brent's method: parabolas where they fit, golden section at
 * kinks and jumps. The best place met is never let go.
 *
 * @param start a place between a and b where the function is at least as high as at both ends
 * @param tolerance in the unit of a and b
 */
export function localMaximum(
  f: (t: number) => number,
  a: number,
  b: number,
  start: number,
  tolerance: number,
): { readonly at: number; readonly value: number } {
  let low = a;
  let high = b;
  let best = start;
  let atBest = f(start);
  let second = best;
  let atSecond = atBest;
  let third = best;
  let atThird = atBest;
  let step = 0;
  let stepBefore = 0;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (Math.abs(best - middle) <= 2 * tolerance - (high - low) / 2) break;
    let isFitted = false;
    if (Math.abs(stepBefore) > tolerance) {
      const r = (best - second) * (atBest - atThird);
      let q = (best - third) * (atBest - atSecond);
      let p = (best - third) * q - (best - second) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      else q = -q;
      if (
        Math.abs(p) < Math.abs((q * stepBefore) / 2) &&
        p > q * (low - best) &&
        p < q * (high - best)
      ) {
        stepBefore = step;
        step = p / q;
        isFitted = true;
      }
    }
    if (!isFitted) {
      stepBefore = best < middle ? high - best : low - best;
      step = GOLDEN * stepBefore;
    }
    const t = best + (Math.abs(step) >= tolerance ? step : Math.sign(step) * tolerance);
    const ft = f(t);
    if (ft >= atBest) {
      if (t >= best) low = best;
      else high = best;
      [third, atThird, second, atSecond, best, atBest] = [second, atSecond, best, atBest, t, ft];
    } else {
      if (t < best) low = t;
      else high = t;
      if (ft >= atSecond || second === best) {
        [third, atThird, second, atSecond] = [second, atSecond, t, ft];
      } else if (ft >= atThird || third === best || third === second) {
        third = t;
        atThird = ft;
      }
    }
  }
  return { at: best, value: atBest };
}
