import { inRange, positive } from '../geometry/numeric.ts';

/**
 * How cement gives off its heat as it sets. By the clock alone: cement that sets faster where it is warmer is not in it.
 */
export interface CementKinetics {
  /** Heat of the whole setting, J/mm³, 0 and up */
  readonly totalHeat: number;
  /** From when the cement is in place to the greatest rate of heat, s, above 0 */
  readonly peakTime: number;
  /** How sudden the setting is, 1.5 to 20: at 6 the middle half of the heat comes within a quarter of the time to the peak. Left out: 6. */
  readonly exponent?: number | undefined;
}

export const USUAL_EXPONENT = 6;

/**
 * Rate at which a volume of cement gives off heat, W/mm³, as a function of time, s: H (n/τ) (t/τ)^(n−1) exp(−(t/τ)ⁿ) with
 * τ = t_peak (n/(n−1))^(1/n). Its sum is H (1 − exp(−(t/τ)ⁿ)), the Avrami law of a reaction that spreads from seeds.
 *
 * @throws RangeError naming the argument, its value and what is allowed
 */
export function settingRate(kinetics: CementKinetics): (time: number) => number {
  const { totalHeat, exponent, scale } = checked(kinetics);
  return (time) => {
    const part = Math.max(0, time) / scale;
    const power = part ** (exponent - 1);
    return totalHeat * (exponent / scale) * power * Math.exp(-power * part);
  };
}

/** Share of the heat that is out by a time, 0 to 1; arguments as for {@link settingRate}. */
export function shareSet(kinetics: CementKinetics, time: number): number {
  const { exponent, scale } = checked(kinetics);
  return -Math.expm1(-((Math.max(0, time) / scale) ** exponent));
}

function checked({ totalHeat, peakTime, exponent = USUAL_EXPONENT }: CementKinetics): {
  readonly totalHeat: number;
  readonly exponent: number;
  readonly scale: number;
} {
  inRange('totalHeat', totalHeat, 0, Infinity, 'J/mm³');
  positive('peakTime', peakTime, 's');
  inRange('exponent', exponent, 1.5, 20, '');
  return { totalHeat, exponent, scale: peakTime * (exponent / (exponent - 1)) ** (1 / exponent) };
}
