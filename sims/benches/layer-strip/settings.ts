import { materials, type MaterialName } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';
import { choiceField, numberField, type UrlFields } from '../../shared/url-state.ts';

/** Everything a visitor can set on Layer Strip. */
export interface StripSetting {
  readonly upper: MaterialName;
  readonly lower: MaterialName;
  /** mm */
  readonly upperThickness: number;
  readonly lowerThickness: number;
  /** Of the strip and of its joint, mm */
  readonly length: number;
  /** Of the cement between the layers, mm; 0 where they are joined directly */
  readonly film: number;
  /** Along the joint, N */
  readonly pull: number;
  /** At the rim, N */
  readonly press: number;
}

export type StripNumber = Exclude<keyof StripSetting, 'upper' | 'lower'>;

export const ranges: Readonly<Record<StripNumber, Range>> = {
  upperThickness: { min: 0.5, max: 10, step: 0.1, digits: 1, unit: 'mm' },
  lowerThickness: { min: 0.5, max: 10, step: 0.1, digits: 1, unit: 'mm' },
  length: { min: 10, max: 60, step: 1, digits: 0, unit: 'mm' },
  film: { min: 0, max: 1, step: 0.05, digits: 2, unit: 'mm' },
  pull: { min: 10, max: 300, step: 10, digits: 0, unit: 'N' },
  press: { min: 10, max: 300, step: 10, digits: 0, unit: 'N' },
};

export const numberNames: Readonly<Record<StripNumber, string>> = {
  upperThickness: 'Thickness of the upper layer',
  lowerThickness: 'Thickness of the lower layer',
  length: 'Length of the strip',
  film: 'Cement between them',
  pull: 'Pull along the joint',
  press: 'Press at the rim',
};

export const materialNames = Object.keys(materials) as readonly MaterialName[];

/** Thicknesses and loads are teaching values, of the size of a socket with a metal back. */
export const defaultStrip: StripSetting = {
  upper: 'polyethylene',
  lower: 'titanium alloy',
  upperThickness: 4,
  lowerThickness: 3,
  length: 34,
  film: 0,
  pull: 200,
  press: 100,
};

const numberOf = (key: string, field: StripNumber) =>
  numberField(key, numberNames[field].toLowerCase(), ranges[field], defaultStrip[field]);

export const stripFields: UrlFields<StripSetting> = {
  upper: choiceField('upper', 'upper material', materialNames, defaultStrip.upper),
  lower: choiceField('lower', 'lower material', materialNames, defaultStrip.lower),
  upperThickness: numberOf('upper-thickness', 'upperThickness'),
  lowerThickness: numberOf('lower-thickness', 'lowerThickness'),
  length: numberOf('length', 'length'),
  film: numberOf('film', 'film'),
  pull: numberOf('pull', 'pull'),
  press: numberOf('press', 'press'),
};
