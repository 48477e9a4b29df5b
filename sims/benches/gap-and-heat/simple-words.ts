import { boneAt, heatOf } from './heat.ts';
import { defaultGap, type GapSetting } from './settings.ts';

/*
 * The plain bench in plain words. Its sizes are teaching values: three gaps far enough apart to be told from each other at
 * a glance, round a keel.
 */

export type GapName = 'thin' | 'middle' | 'thick';

export const gaps: readonly {
  readonly name: GapName;
  readonly text: string;
  /** Of the cement, mm */
  readonly thickness: number;
}[] = [
  { name: 'thin', text: 'Small gap', thickness: 1 },
  { name: 'middle', text: 'Middle gap', thickness: 2.5 },
  { name: 'thick', text: 'Big gap', thickness: 4.5 },
];

/** Moments from the cement going in: when, s, and what is said of it. */
export const moments: readonly { readonly time: number; readonly words: string }[] = [
  { time: 0, words: 'The cement goes in soft and cool.' },
  { time: 270, words: 'It starts to set.' },
  { time: 370, words: 'Now it is at its hottest.' },
  { time: 900, words: 'It has set, and it cools down.' },
];

/** How warm the bone is called, by the least it is called so for, °C. */
const warmths: readonly { readonly from: number; readonly words: string }[] = [
  { from: 47, words: 'The bone next to it is too hot.' },
  { from: 43, words: 'The bone next to it is hot.' },
  { from: 38, words: 'The bone next to it is warm.' },
  { from: -Infinity, words: 'The bone next to it is not hot.' },
];

export const marks = { hot: 'too hot', body: 'body' } as const;

export function settingOf(gap: GapName, moment: number): GapSetting {
  const thickness = gaps.find(({ name }) => name === gap)?.thickness ?? defaultGap.gap;
  return {
    ...defaultGap,
    gap: thickness,
    fitError: 0,
    time: moments[moment]?.time ?? 0,
  };
}

/** How warm the bone is at a moment, in plain words. */
export function warmthWords(celsius: number): string {
  return warmths.find(({ from }) => celsius >= from)?.words ?? '';
}

export function outcomeOf(gap: GapName, moment: number): string {
  const setting = settingOf(gap, moment);
  const shown = boneAt(heatOf(setting, setting.measured), setting.time);
  return `${moments[moment]?.words ?? ''} ${warmthWords(shown)}`;
}

/** The picture for those who hear it. */
export function pictureWords(gap: GapName): string {
  const size = { thin: 'a small gap', middle: 'a gap of middle size', thick: 'a big gap' }[gap];
  return `A part in the bone with ${size} round it. Cement fills the gap. The mark shows how hot the bone is.`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  ...moments.map(({ words }) => words),
  ...warmths.map(({ words }) => words),
  ...gaps.map(({ name }) => pictureWords(name)),
];
