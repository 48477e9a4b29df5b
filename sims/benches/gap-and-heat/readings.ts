import type { CementHeat } from '../../mechanics/index.ts';
import { celsius, clock, cubicCentimetres, grams, holdWords, pegsText } from './lettering.ts';
import type { Mantles } from './mantle.ts';
import type { HoldName } from './settings.ts';

/** A number under the drawing: its name, itself, and what it means. */
export interface Reading {
  readonly name: string;
  readonly value: string;
  readonly note?: string;
}

const others: Readonly<Record<HoldName, HoldName>> = { pegs: 'keel', keel: 'pegs' };

/** The strip of numbers under the drawing. */
export function readingsOf(
  { setting, pegs, keel }: Mantles,
  heats: Readonly<Record<HoldName, CementHeat>>,
): readonly Reading[] {
  const { measured } = setting;
  const [here, other] = [heats[measured], heats[others[measured]]];
  return [
    {
      name: `Cement of ${pegsText(setting)}`,
      value: cubicCentimetres(pegs.cement),
      note: `${grams(pegs.cement)}; ${grams(pegs.cement - pegs.planned)} by the fit error`,
    },
    {
      name: 'Cement of the keel',
      value: cubicCentimetres(keel.cement),
      note: `${grams(keel.cement)}; ${grams(keel.cement - keel.planned)} by the fit error`,
    },
    {
      name: 'Peak at the bone',
      value: celsius(here.peakAtBone),
      note: `after ${clock(here.peakTime)}; ${holdWords[others[measured]].where} ${celsius(other.peakAtBone)}`,
    },
    {
      name: 'Above 47 °C',
      value: here.timeAbove47 === 0 ? 'never' : clock(here.timeAbove47),
      note:
        here.depthAbove47 === 0
          ? 'a minute there injures bone'
          : `reaches ${here.depthAbove47.toFixed(1)}\u00a0mm into the bone`,
    },
    {
      name: 'Above 50 °C',
      value: here.timeAbove50 === 0 ? 'never' : clock(here.timeAbove50),
      note: `hottest cement: ${celsius(here.peakInCement)}`,
    },
  ];
}
