import type { BoneAnswer, Ingrowth } from '../../mechanics/index.ts';
import { fixedText, newtons, percent } from '../../shared/format.ts';
import { momentAt, mostly } from './run.ts';
import { MICROMETRES, WEEKS, type WeekSetting } from './settings.ts';

/** A motion in mm, written in µm. */
export function motionText(motion: number): string {
  if (!Number.isFinite(motion)) return 'without end';
  const value = motion * MICROMETRES;
  return `${fixedText(value, value < 10 ? 1 : 0)}\u00a0µm`;
}

/** The figure in words, for whoever hears it instead of seeing it. */
export function describe(setting: WeekSetting, run: Ingrowth): string {
  return [`${settingLine(setting)}.`, weekWords(setting.week, run), endWords(run)].join(' ');
}

export function settingLine({ press, place, rest, pegs, bone }: WeekSetting): string {
  const load =
    press === 0
      ? 'No load'
      : `${newtons(press)} every day, ${percent(place / 100)} of the way from the middle to the rim`;
  const first = rest === 0 ? 'from the first day' : `after ${weeksText(rest)} of rest`;
  const small = pegs === 'none' ? 'no small pegs' : 'three small cemented pegs';
  return `${load}, ${first}; a fluted peg in the middle and ${small}, in ${bone}`;
}

export const weeksText = (weeks: number): string => (weeks === 1 ? '1 week' : `${weeks} weeks`);

const answers: Readonly<Record<BoneAnswer, string>> = {
  grows: 'bone grows in',
  stays: 'bone neither grows nor is lost',
  'is lost': 'bone is lost, and fibrous tissue takes its place',
};

/** A week in words, short enough to be said at every step. */
export function weekWords(week: number, run: Ingrowth): string {
  const { share, under } = momentAt(run, week);
  if (under === undefined || week === 0)
    return 'Before the first week: no bone between the flutes.';
  const moved =
    under.motion === 0 ? 'nothing moves' : `the spaces move by up to ${motionText(under.motion)}`;
  return `Week ${week}: ${moved}; ${answers[mostly(under.places)]}; ${percent(share)} of the spaces is bone.`;
}

export function endWords({ weeks }: Ingrowth): string {
  const last = weeks.at(-1);
  if (last === undefined) return '';
  const lost = weeks.find(({ outcome }) => outcome !== 'balanced');
  if (lost !== undefined) return `In week ${lost.week} the socket no longer bears the load.`;
  const full = last.places.filter(({ share }) => share > 0.5).length;
  return `After ${WEEKS} weeks ${full} of ${last.places.length} spaces are more than half bone.`;
}
