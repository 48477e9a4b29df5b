import { fixedText, mm, newtons, ratio } from '../../shared/format.ts';
import { lengthText, modulusOf, modulusText, stepText, stressText } from './lettering.ts';
import { WIDTH, type Strip } from './strip.ts';
import type { StripSetting } from './settings.ts';

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(setting: StripSetting, strip: Strip): string {
  return [
    `${settingLine(setting)}, ${WIDTH} mm wide.`,
    stepWords(setting, strip),
    `Dundurs’ parameters: α ${signedRatio(strip.pair.alpha)}, β ${signedRatio(strip.pair.beta)}.`,
    shearWords(setting, strip),
    bendingWords(setting, strip),
  ].join(' ');
}

/** The setting in one line. */
export function settingLine(setting: StripSetting): string {
  const { upper, lower, upperThickness, lowerThickness, length, film } = setting;
  const joined = film === 0 ? 'joined directly' : `with ${mm(film, 2)} of cement between`;
  return `${mm(upperThickness, 1)} of ${upper} on ${mm(lowerThickness, 1)} of ${lower}, ${joined}, ${mm(length)} long`;
}

export function stepWords({ upper, lower }: StripSetting, { step }: Strip): string {
  const [above, below] = [modulusOf(upper), modulusOf(lower)];
  if (above === below) return `Both layers are as stiff: ${modulusText(above)}.`;
  const [stiffer, softer] = above > below ? [upper, lower] : [lower, upper];
  return `The ${stiffer} is stiffer than the ${softer}, ${stepText(step)}.`;
}

export function shearWords(setting: StripSetting, { shear, peakShear }: Strip): string {
  const { pull } = setting;
  const most = `${stressText(peakShear)}, ${ratio(shear.peakToMean, 1)} times the mean of ${stressText(shear.mean)}`;
  return `Pulled along with ${newtons(pull)}, the joint bears most at ${peakPlace(setting)}: ${most}.`;
}

/** Where the shear is greatest: where the layer is pulled that stretches more. */
export function peakPlace(setting: StripSetting): string {
  const above = modulusOf(setting.upper) * setting.upperThickness;
  const below = modulusOf(setting.lower) * setting.lowerThickness;
  if (Math.abs(above - below) <= 1e-9 * Math.max(above, below)) return 'both ends alike';
  return above < below
    ? 'the left end, where the upper layer is pulled'
    : 'the right end, where the lower layer is pulled';
}

export function bendingWords({ press }: StripSetting, strip: Strip): string {
  const { bending, deflection, isSmallBend } = strip;
  if (!isSmallBend) {
    return `Pressed at its rim with ${newtons(press)}, half of it without support, it bends too far for the theory of small bends.`;
  }
  const [lower, upper] = bending.stresses;
  return (
    `Pressed at its rim with ${newtons(press)}, half of it without support, the rim goes down by ${lengthText(deflection)}; ` +
    `where the support ends, the top is pulled by ${stressText(upper.top)} and the bottom pressed by ${stressText(-lower.bottom)}.`
  );
}

export const signedRatio = (value: number): string => {
  const text = fixedText(value, 3);
  return /[1-9]/.test(text) ? text : '0';
};
