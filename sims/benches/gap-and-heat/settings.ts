import type { Range } from '../../shared/range.ts';
import { choiceField, numberField, type UrlFields } from '../../shared/url-state.ts';

/** What stands in the bone: round pegs in their holes, or a keel in its slot. */
export type HoldName = 'pegs' | 'keel';
export const holdNames: readonly HoldName[] = ['pegs', 'keel'];

/** Everything a visitor can set on Gap and Heat. */
export interface GapSetting {
  /** Whose bone the thermometer is in */
  readonly measured: HoldName;
  /** Room planned on every side, mm */
  readonly gap: number;
  /** How much wider and deeper the hole came out, on every side, mm */
  readonly fitError: number;
  readonly pegCount: number;
  readonly pegDiameter: number;
  readonly pegLength: number;
  /** Of the keel along the face, across it, and into the bone, mm */
  readonly keelLength: number;
  readonly keelThickness: number;
  readonly keelHeight: number;
  /** Heat of setting, J/mm³ */
  readonly heat: number;
  /** From cement in place to the greatest rate of heat, s */
  readonly peakTime: number;
  /** Of cement and component when they go in, °C */
  readonly start: number;
  /** The moment shown, s after the cement is in place */
  readonly time: number;
}

export type GapNumber = Exclude<keyof GapSetting, 'measured'>;

const mm = (min: number, max: number, step: number): Range => ({
  min,
  max,
  step,
  digits: 1,
  unit: 'mm',
});

export const ranges: Readonly<Record<GapNumber, Range>> = {
  gap: mm(0.2, 3, 0.1),
  fitError: mm(0, 3, 0.1),
  pegCount: { min: 1, max: 5, step: 1, digits: 0, unit: '' },
  pegDiameter: mm(3, 8, 0.5),
  pegLength: mm(5, 14, 0.5),
  keelLength: mm(10, 26, 0.5),
  keelThickness: mm(2, 6, 0.5),
  keelHeight: mm(5, 14, 0.5),
  heat: { min: 0.05, max: 0.2, step: 0.01, digits: 2, unit: 'J/mm³' },
  peakTime: { min: 120, max: 600, step: 10, digits: 0, unit: 's' },
  start: { min: 4, max: 30, step: 1, digits: 0, unit: '°C' },
  time: { min: 0, max: 1800, step: 10, digits: 0, unit: 's' },
};

export const numberNames: Readonly<Record<GapNumber, string>> = {
  gap: 'Gap planned, all round',
  fitError: 'Fit error, on every side',
  pegCount: 'Pegs',
  pegDiameter: 'Diameter of a peg',
  pegLength: 'Length of a peg',
  keelLength: 'Length of the keel',
  keelThickness: 'Thickness of the keel',
  keelHeight: 'Depth of the keel',
  heat: 'Heat of setting',
  peakTime: 'Time of the most heat',
  start: 'Cement and component go in at',
  time: 'Time since the cement went in',
};

/** All of them teaching values; those of the heat lie within what print gives. */
export const defaultGap: GapSetting = {
  measured: 'keel',
  gap: 1,
  fitError: 1,
  pegCount: 3,
  pegDiameter: 5,
  pegLength: 10,
  keelLength: 20,
  keelThickness: 4,
  keelHeight: 11,
  heat: 0.15,
  peakTime: 300,
  start: 20,
  time: 360,
};

const numberOf = (key: string, field: GapNumber) =>
  numberField(key, numberNames[field].toLowerCase(), ranges[field], defaultGap[field]);

export const gapFields: UrlFields<GapSetting> = {
  measured: choiceField('in', 'place of the thermometer', holdNames, defaultGap.measured),
  gap: numberOf('gap', 'gap'),
  fitError: numberOf('error', 'fitError'),
  pegCount: numberOf('pegs', 'pegCount'),
  pegDiameter: numberOf('peg', 'pegDiameter'),
  pegLength: numberOf('peg-length', 'pegLength'),
  keelLength: numberOf('keel', 'keelLength'),
  keelThickness: numberOf('keel-thickness', 'keelThickness'),
  keelHeight: numberOf('keel-depth', 'keelHeight'),
  heat: numberOf('heat', 'heat'),
  peakTime: numberOf('peak', 'peakTime'),
  start: numberOf('start', 'start'),
  time: numberOf('at', 'time'),
};
