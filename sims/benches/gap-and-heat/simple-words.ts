import { heatOf } from './heat.ts';
import { defaultGap, type GapSetting } from './settings.ts';

/*
 * The plain bench in plain words: a fin in a snug and in a loose hole, and how warm the bone gets while the cement sets.
 * The two layers, and where “a bit” ends and “a lot” begins, are teaching values.
 */

export type FitName = 'snug' | 'loose';

export const fits: readonly {
  readonly name: FitName;
  readonly text: string;
  /** Of the cement, mm */
  readonly thickness: number;
}[] = [
  { name: 'snug', text: 'Snug fit', thickness: 1 },
  { name: 'loose', text: 'Loose fit', thickness: 4 },
];

/** How far the bone warms, by the least it is called so for, °C above the body. */
const warmings: readonly { readonly from: number; readonly words: string }[] = [
  { from: 10, words: 'warms a lot' },
  { from: 6, words: 'warms more' },
  { from: -Infinity, words: 'warms a bit' },
];

/** Names on the thermometer, °C. */
export const marks = [
  { at: 37, text: 'body' },
  { at: 50, text: 'hot' },
] as const;

export function settingOf(fit: FitName): GapSetting {
  const thickness = fits.find(({ name }) => name === fit)?.thickness ?? defaultGap.gap;
  return { ...defaultGap, measured: 'keel', gap: thickness, fitError: 0 };
}

const layers: Readonly<Record<FitName, string>> = { snug: 'thin', loose: 'thick' };

export const underWay = 'The cement sets. Watch the bone get warm.';

export function waiting(fit: FitName): string {
  return `A ${fit} fit leaves a ${layers[fit]} layer of cement.`;
}

/** How far the bone has warmed once the cement has set, in plain words. */
export function outcomeOf(fit: FitName): string {
  const setting = settingOf(fit);
  const [{ peakAtBone }, body] = [heatOf(setting, setting.measured), marks[0].at];
  const words = warmings.find(({ from }) => peakAtBone - body >= from)?.words ?? '';
  return `With a ${layers[fit]} layer, the bone ${words}. Then it cools.`;
}

/** The picture for those who hear it. */
export function pictureWords(fit: FitName): string {
  return `A fin in bone, cut in half. A ${layers[fit]} layer of cement fills the gap. The mark shows how warm the bone is.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  underWay,
  ...fits.flatMap(({ name }) => [waiting(name), outcomeOf(name), pictureWords(name)]),
];
