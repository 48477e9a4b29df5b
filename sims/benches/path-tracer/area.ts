import { rimContactTranslation, stabilityRatioAt } from '../../geometry/index.ts';
import type { Cup } from '../shared/cup-setting.ts';

/**
 * Area under the frictionless ratio from the middle out to a translation, mm, summed from the curve itself.
 *
 * It knows nothing of the climb, so that its agreement with the climb is a finding and not a definition.
 *
 * @param translation mm, 0 … width/2
 */
export function areaUnderRatio({ socket, ballRadius }: Cup, translation: number): number {
  const rim = Math.min(translation, rimContactTranslation(socket, ballRadius));
  const ratio = (x: number): number => stabilityRatioAt(socket, ballRadius, x);
  return integral(ratio, 0, rim) + integral(ratio, rim, translation);
}

const STEP = 0.125;
/** Beyond this the points fall together with the ends, where a function may have no value. */
const REACH = 3;

/**
 * Integral of a function smooth inside (from, to); it may grow without bound towards the ends.
 *
 * Tanh–sinh quadrature (Takahasi and Mori 1974): x = tanh(π/2 · sinh t) crowds its points toward the ends so fast that
 * the plain trapezium rule in t converges exponentially.
 */
export function integral(f: (x: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  if (half <= 0) return 0;
  let sum = 0;
  for (let t = -REACH; t <= REACH + STEP / 2; t += STEP) {
    const s = (Math.PI / 2) * Math.sinh(t);
    const weight = ((Math.PI / 2) * Math.cosh(t)) / Math.cosh(s) ** 2;
    // Distance from the nearer end: 1 − tanh|s| loses its digits close to the ends.
    const fromEnd = (2 * half) / (1 + Math.exp(2 * Math.abs(s)));
    const x = s < 0 ? from + fromEnd : to - fromEnd;
    sum += weight * f(Math.max(from, Math.min(to, x)));
  }
  return sum * half * STEP;
}
