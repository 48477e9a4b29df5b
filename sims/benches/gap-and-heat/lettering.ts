import { fixedText, mm } from '../../shared/format.ts';
import { DENSITY } from './mantle.ts';
import type { GapSetting, HoldName } from './settings.ts';

export const tenths = (value: number): string => mm(value, 1);
export const celsius = (value: number, digits = 1): string => `${fixedText(value, digits)}\u00a0°C`;
/** mm³ in, cm³ written. */
export const cubicCentimetres = (volume: number): string =>
  `${fixedText(volume / 1000, 2)}\u00a0cm³`;
export const grams = (volume: number): string => `${fixedText(volume * DENSITY, 1)}\u00a0g`;

/** "5 min 20 s" */
export function clock(seconds: number): string {
  const whole = Math.round(seconds);
  const [minutes, rest] = [Math.floor(whole / 60), whole % 60];
  if (minutes === 0) return `${rest}\u00a0s`;
  return rest === 0 ? `${minutes}\u00a0min` : `${minutes}\u00a0min ${rest}\u00a0s`;
}

export const holdWords: Readonly<
  Record<HoldName, { readonly one: string; readonly where: string }>
> = {
  pegs: { one: 'peg', where: 'round a peg' },
  keel: { one: 'keel', where: 'beside the keel' },
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "3 pegs" */
export const pegsText = ({ pegCount }: GapSetting): string =>
  `${pegCount} peg${pegCount === 1 ? '' : 's'}`;

/** The setting in one line, for the foot of a picture. */
export function settingLine(setting: GapSetting): string {
  const { gap, fitError, heat, peakTime, start, time, measured } = setting;
  return (
    `gap ${tenths(gap)}, fit error ${tenths(fitError)}; ` +
    `${pegsText(setting)} ${tenths(setting.pegDiameter)} by ${tenths(setting.pegLength)}; ` +
    `keel ${tenths(setting.keelLength)} by ${tenths(setting.keelThickness)} by ${tenths(setting.keelHeight)}; ` +
    `${fixedText(heat, 2)} J/mm³, most at ${clock(peakTime)}, in at ${celsius(start, 0)}; ` +
    `${clock(time)}, thermometer ${holdWords[measured].where}`
  );
}
