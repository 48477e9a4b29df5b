import { materials, type LayerStress, type MaterialName } from '../../mechanics/index.ts';
import { ratio } from '../../shared/format.ts';
import type { Reading } from '../two-curves/readings.ts';
import { peakPlace, signedRatio } from './describe.ts';
import { lengthText, modulusOf, modulusText, stepText, stressText } from './lettering.ts';
import type { StripSetting } from './settings.ts';
import type { Strip } from './strip.ts';

/** The strip of numbers under the drawing. */
export function readingsOf(setting: StripSetting, strip: Strip): readonly Reading[] {
  const { pair, shear, bending } = strip;
  const [lower, upper] = bending.stresses;
  const [above, below] = [modulusOf(setting.upper), modulusOf(setting.lower)];
  return [
    {
      name: 'Step in stiffness',
      value: stepText(strip.step),
      note: `${modulusText(above)} on ${modulusText(below)}`,
    },
    {
      name: 'Dundurs’ α',
      value: signedRatio(pair.alpha),
      note: `β ${signedRatio(pair.beta)}; upper on lower, plane strain`,
    },
    {
      name: 'Greatest shear',
      value: stressText(strip.peakShear),
      note: `${ratio(shear.peakToMean, 1)} × the mean, at ${peakPlace(setting).replace(/, .*/, '')}; falls to 37\u00a0% within ${lengthText(shear.transferLength)}`,
      tone: 'force',
    },
    stressReading('Stress, upper layer', setting.upper, upper),
    stressReading('Stress, lower layer', setting.lower, lower),
    {
      name: 'Rim goes down',
      value: strip.isSmallBend ? lengthText(strip.deflection) : 'too far',
      note: strip.isSmallBend
        ? 'half the strip without support'
        : 'more than a tenth of the free half: beyond this theory, and so are the stresses',
      tone: 'motion',
    },
  ];
}

function stressReading(name: string, material: MaterialName, stress: LayerStress): Reading {
  const most = Math.abs(stress.top) > Math.abs(stress.bottom) ? stress.top : stress.bottom;
  const { tensileStrength, compressiveStrength = tensileStrength } = materials[material];
  const strength = most > 0 ? tensileStrength : compressiveStrength;
  return {
    name,
    value: stressText(Math.abs(most)),
    note: `${most > 0 ? 'pulled' : 'pressed'}; ${material} bears some ${stressText(strength.value)}`,
    tone: 'force',
  };
}
