import { beginning } from './acts.ts';
import { readForce, type ForceReading } from './reading.ts';
import type { ForceSetting } from './settings.ts';
import type { Settled } from './settle.ts';

/*
 * The plain bench in plain words. Its sizes are teaching values: a shallow cup, pulls and a tilt far enough apart to be
 * told from each other at a glance.
 */

export type MuscleName = 'frontWeak' | 'bothStrong' | 'backWeak';
export type TiltName = 'straight' | 'tilted';

export const muscles: readonly { readonly name: MuscleName; readonly text: string }[] = [
  { name: 'frontWeak', text: 'Front weak' },
  { name: 'bothStrong', text: 'Both strong' },
  { name: 'backWeak', text: 'Back weak' },
];

export const tilts: readonly { readonly name: TiltName; readonly text: string }[] = [
  { name: 'straight', text: 'Straight cup' },
  { name: 'tilted', text: 'Tilted cup' },
];

/** N: what is left of a weak muscle’s pull. */
const WEAK = 80;
/** Degrees, backward. */
const TILT = 8;
const DEPTH = 2;
/** Nearer to the middle than this, mm, counts as near the middle: less than a tenth of the cup’s width. */
const NEAR = 2;

const changes: Readonly<Record<MuscleName, Partial<ForceSetting>>> = {
  frontWeak: { frontCuffSize: WEAK },
  bothStrong: {},
  backWeak: { backCuffSize: WEAK },
};

/** What the plain bench sets. */
export function plainSetting(muscle: MuscleName, tilt: TiltName): ForceSetting {
  const version = tilt === 'tilted' ? TILT : 0;
  return { ...beginning, depth: DEPTH, version, ...changes[muscle] };
}

export const plainReading = (muscle: MuscleName, tilt: TiltName): ForceReading =>
  readForce(plainSetting(muscle, tilt));

export const underWay = 'Watch the ball.';

const rests = {
  middle: 'The ball sits near the middle of its cup.',
  front: 'The ball rides to the front of its cup.',
  back: 'The ball rides to the back of its cup.',
  outBack: 'The ball slips out at the back.',
  outFront: 'The ball slips out at the front.',
} as const;

const reasons = {
  match: 'The two muscles match.',
  weak: 'The strong muscle pushes it to the weak side.',
  tilt: 'In a tilted cup, the push lands on one side.',
  cancel: 'The weak muscle and the tilt work against each other.',
  add: 'The weak muscle and the tilt add up.',
} as const;

/** Where the ball has come to. */
export function restWords({ translation, angle }: ForceReading): string {
  if (translation === null) return (angle ?? 0) < 0 ? rests.outFront : rests.outBack;
  if (Math.abs(translation) < NEAR) return rests.middle;
  return translation < 0 ? rests.front : rests.back;
}

/** Why it is there. */
export function reasonWords({ lean, tilt }: ForceReading): string {
  const isLeaning = Math.abs(lean) > 1e-6;
  if (tilt === 0) return isLeaning ? reasons.weak : reasons.match;
  if (!isLeaning) return reasons.tilt;
  return Math.sign(lean) === Math.sign(tilt) ? reasons.add : reasons.cancel;
}

/** What is said of a choice, while its ball is on its way and after. */
export function outcomeOf(reading: ForceReading, measured: Settled | null): string {
  if (measured?.outcome === 'moving') return underWay;
  return `${restWords(reading)} ${reasonWords(reading)}`;
}

const pulling: Readonly<Record<MuscleName, string>> = {
  frontWeak: 'The front muscle is weak. The back one is strong.',
  bothStrong: 'Both muscles are strong.',
  backWeak: 'The back muscle is weak. The front one is strong.',
};
const standing: Readonly<Record<TiltName, string>> = {
  straight: 'The cup is straight.',
  tilted: 'The cup is tilted to the back.',
};

/** The picture for those who hear it. */
export function pictureWords(muscle: MuscleName, tilt: TiltName): string {
  return `A shoulder from above. ${pulling[muscle]} ${standing[tilt]}`;
}

/** Everything the bench can ever say, to be checked for how hard it is to read. */
export const everySentence: readonly string[] = [
  underWay,
  ...Object.values(rests),
  ...Object.values(reasons),
  ...muscles.flatMap(({ name }) => tilts.map((tilt) => pictureWords(name, tilt.name))),
];
