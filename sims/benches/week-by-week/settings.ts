import { boneNames, usualMotionThresholds, type BoneName } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';
import { choiceField, numberField, type UrlFields } from '../../shared/url-state.ts';

/** Weeks that are computed. */
export const WEEKS = 26;

export const SMALL_PEGS = ['none', 'three'] as const;
export type SmallPegs = (typeof SMALL_PEGS)[number];

/** Everything a visitor can set on Week by Week. */
export interface WeekSetting {
  /** N */
  readonly press: number;
  /** From the middle of the face toward its rim, per cent */
  readonly place: number;
  /** Weeks without load to begin with */
  readonly rest: number;
  /** Small pegs in cement round the fluted one */
  readonly pegs: SmallPegs;
  readonly bone: BoneName;
  /** Motion up to which bone grows in, and from which it is lost, µm */
  readonly lower: number;
  readonly upper: number;
  /** The week looked at */
  readonly week: number;
}

export type WeekNumber = Exclude<keyof WeekSetting, 'pegs' | 'bone'>;

export const ranges: Readonly<Record<WeekNumber, Range>> = {
  press: { min: 0, max: 1500, step: 10, digits: 0, unit: 'N' },
  place: { min: 0, max: 95, step: 1, digits: 0, unit: '%' },
  rest: { min: 0, max: 12, step: 1, digits: 0, unit: 'weeks' },
  lower: { min: 10, max: 100, step: 1, digits: 0, unit: 'µm' },
  upper: { min: 100, max: 400, step: 5, digits: 0, unit: 'µm' },
  week: { min: 0, max: WEEKS, step: 1, digits: 0, unit: '' },
};

export const numberNames: Readonly<Record<WeekNumber, string>> = {
  press: 'Press, every day',
  place: 'Ball, toward the rim',
  rest: 'Rest first',
  lower: 'Bone grows up to',
  upper: 'Bone is lost from',
  week: 'Week',
};

export const MICROMETRES = 1000;

/** The press and the place are teaching values; the thresholds are those of two studies in dogs. */
export const defaultWeek: WeekSetting = {
  press: 750,
  place: 70,
  rest: 0,
  pegs: 'three',
  bone: 'bone, across the face',
  lower: MICROMETRES * usualMotionThresholds.lower,
  upper: MICROMETRES * usualMotionThresholds.upper,
  week: 8,
};

const numberOf = (field: WeekNumber) =>
  numberField(field, numberNames[field].toLowerCase(), ranges[field], defaultWeek[field]);

export const weekFields: UrlFields<WeekSetting> = {
  press: numberOf('press'),
  place: numberOf('place'),
  rest: numberOf('rest'),
  pegs: choiceField('pegs', 'small pegs', SMALL_PEGS, defaultWeek.pegs),
  bone: choiceField('bone', 'bone', boneNames, defaultWeek.bone),
  lower: numberOf('lower'),
  upper: numberOf('upper'),
  week: numberOf('week'),
};
