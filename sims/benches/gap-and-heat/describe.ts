import type { CementHeat } from '../../mechanics/index.ts';
import { boneAt } from './heat.ts';
import { injuryWords } from './injury.ts';
import {
  celsius,
  clock,
  cubicCentimetres,
  grams,
  holdWords,
  pegsText,
  tenths,
} from './lettering.ts';
import { thicknessOf, type Mantles } from './mantle.ts';
import type { HoldName } from './settings.ts';

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(
  { setting, pegs, keel }: Mantles,
  heats: Readonly<Record<HoldName, CementHeat>>,
): string {
  const { gap, fitError, measured, time } = setting;
  const heat = heats[measured];
  return [
    `A gap of ${tenths(gap)} planned on every side and a fit error of ${tenths(fitError)}: ${tenths(thicknessOf(setting))} of cement.`,
    `${pegsText(setting)} take ${cubicCentimetres(pegs.cement)}, ${grams(pegs.cement)}; a keel takes ${cubicCentimetres(keel.cement)}, ${grams(keel.cement)}.`,
    `The bone’s surface ${holdWords[measured].where} gets as hot as ${celsius(heat.peakAtBone)}, ${clock(heat.peakTime)} after the cement went in;`,
    heat.timeAbove47 === 0
      ? 'it never passes 47 °C.'
      : `it is above 47 °C for ${clock(heat.timeAbove47)} and above 50 °C for ${clock(heat.timeAbove50)}.`,
    timeWords(heat, time),
    injuryWords(heat),
  ].join(' ');
}

/** The moment shown, short enough to be said at every step of a slider. */
export function timeWords(heat: CementHeat, time: number): string {
  return `After ${clock(time)} the thermometer shows ${celsius(boneAt(heat, time))}.`;
}
