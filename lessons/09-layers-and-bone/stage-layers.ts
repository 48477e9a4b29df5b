import { defaultStrip } from '../../sims/benches/layer-strip/settings.ts';
import { elastic, stripOf } from '../../sims/benches/layer-strip/strip.ts';
import { runOf } from '../../sims/benches/week-by-week/run.ts';
import { defaultWeek, type WeekSetting } from '../../sims/benches/week-by-week/settings.ts';
import { dundurs, type MaterialName } from '../../sims/mechanics/index.ts';
import { factEntry, factRange, factValue } from '../fact-value.ts';
import * as layers from './layers.ts';

/*
 * What the lecture lays out and draws of layers and of bone: strips of Layer Strip, half years of Week by Week. Sizes and
 * loads are teaching values.
 */

export const onMetal = layers.metalBack.setting;
export const twins = layers.equals.setting;
export const cementOnBone = layers.cementOnBone.setting;
export const thinner = layers.thinner.setting;
export const shorter = layers.shorter.setting;

/** Bone goes on; so much of it is drawn, mm. */
const BONE = 6;
/** Two sockets as they are built up. */
export const stacks = [
  { name: 'all plastic', layers: layers.stackOf(layers.onCement, BONE) },
  { name: 'metal-backed', layers: layers.stackOf(layers.metalBack, BONE) },
];

export const onMetalStrip = layers.metalBack.strip;
/** Length within which the first strip’s load passes over, mm. */
export const transfer = onMetalStrip.shear.transferLength;

/** Peak and mean of the shear, MPa, of a joint by its length, mm; all else as in the first strip. */
export function shearByLength(length: number): { readonly peak: number; readonly mean: number } {
  const { peakShear, shear } = stripOf({ ...defaultStrip, length });
  return { peak: peakShear, mean: shear.mean };
}

/** How far apart the materials of a joint are: |α|, the nearest pair first. */
const joined: readonly (readonly [string, MaterialName, MaterialName])[] = [
  ['plastic, cement', 'polyethylene', 'bone cement'],
  ['plastic, bone', 'polyethylene', 'cancellous bone'],
  ['cement, bone', 'bone cement', 'cancellous bone'],
  ['plastic, metal', 'polyethylene', 'titanium alloy'],
  ['metal, bone', 'titanium alloy', 'cancellous bone'],
];
export const pairs = joined
  .map(([name, one, other]) => ({
    name,
    apart: Math.abs(dundurs(elastic(one), elastic(other)).alpha),
  }))
  .toSorted((a, b) => a.apart - b.apart);

/** A fluted peg by itself, lightly loaded; twice and six times so; and the last after rest. */
export const LIGHT = 250;
export const REST = 6;
export const light: Partial<WeekSetting> = { pegs: 'none', press: LIGHT };
export const twice: Partial<WeekSetting> = { ...light, press: 2 * LIGHT };
export const early: Partial<WeekSetting> = { ...light, press: 6 * LIGHT };
export const late: Partial<WeekSetting> = { ...early, rest: REST };
export const pegged: Partial<WeekSetting> = { ...twice, pegs: 'three' };
/** What the bench is set to by hand: the same rest, the ball nearer the rim. */
const nearRim = runOf({ ...defaultWeek, ...late, place: 90 });
export const rimShare = nearRim.share;
export const rimShareBefore = nearRim.weeks[REST - 1]?.share ?? NaN;

/** Filling without any motion, a share for every week from 0 on. */
export const undisturbed: readonly number[] = [
  0,
  ...runOf({ ...defaultWeek, press: 0 }).weeks.map(({ share }) => share),
];

/** Motion at which something was found in animals, µm. */
export const dogs = {
  most: factValue('ingrowth-motion-most'),
  fibrous: factValue('ingrowth-motion-fibrous-least'),
  joined: factValue('ingrowth-motion-continuous'),
  mixed: factValue('ingrowth-motion-mixed'),
  dense: factValue('ingrowth-motion-dense-fibrous'),
};

/** Mean and one standard deviation to either side, not below nothing, µm. */
function spread(fact: string): {
  readonly mean: number;
  readonly from: number;
  readonly to: number;
} {
  const [mean, sd] = [factValue(fact), factValue(fact, 'sd')];
  return { mean, from: Math.max(0, mean - sd), to: mean + sd };
}
export const took = spread('motion-of-implants-that-took');
export const failed = spread('motion-of-implants-that-did-not-take');

/** Pores filled, per cent, by the week, as the rates were set. */
export const pores = {
  twoWeeks: factValue('pores-filled-two-weeks'),
  fourWeeks: factRange('pores-filled-four-weeks'),
  later: factRange('pores-filled-later'),
};

/** How many shoulders there were, and how many had bone where it was looked for. */
function shoulders(fact: string): { readonly all: number; readonly filled: number } {
  const all = factEntry(fact).n ?? NaN;
  return { all, filled: Math.round((all * factValue(fact)) / 100) };
}
export const twoYears = shoulders('flutes-all-filled-two-years');
export const oneYear = shoulders('flutes-filled-one-year');
