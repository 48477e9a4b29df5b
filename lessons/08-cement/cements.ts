import { BODY_TEMPERATURE, halfPolymer, heatOf } from '../../sims/benches/gap-and-heat/heat.ts';
import { DENSITY, designOf } from '../../sims/benches/gap-and-heat/mantle.ts';
import {
  defaultGap,
  type GapSetting,
  type HoldName,
} from '../../sims/benches/gap-and-heat/settings.ts';
import {
  arrheniusDamage,
  BONE_HEAT_LIMIT,
  cem43,
  cementVolume,
  henriques,
  materials,
  SKIN_BURN_LIMIT,
  type CementHeat,
} from '../../sims/mechanics/index.ts';
import { fixedText } from '../../sims/shared/format.ts';

/*
 * Everything the lesson shows, computed: pegs and keel of Gap and Heat, their cement and its heat. Sizes and heat of setting
 * are that bench’s teaching values.
 */

/** Gap and Heat as the lesson opens it: the gap that was planned, and no fit error. */
export const opening: GapSetting = { ...defaultGap, gap: 1, fitError: 0 };
/** J/mm³, s and °C */
export const { heat: totalHeat, peakTime, start } = opening;
export const bodyTemperature = BODY_TEMPERATURE;

/*
 * Volume
 */

/** Cement of one design in the three parts of its formula, mm³. */
export interface VolumeParts {
  /** A sheet as large as the sides, as thick as the gap */
  readonly sheet: number;
  /** What the way round gains as it moves outward: it goes with the square of the gap */
  readonly corners: number;
  /** Beyond the tip */
  readonly tip: number;
  readonly total: number;
}

const { pegCount, pegDiameter, pegLength, keelLength, keelThickness, keelHeight } = opening;
export { keelLength, keelThickness, pegCount, pegDiameter, pegLength };

/** Cement round pegs that stand with a gap on every side, mm³. */
export function pegParts(
  gap: number,
  size: { readonly count: number; readonly diameter: number; readonly length: number } = {
    count: pegCount,
    diameter: pegDiameter,
    length: pegLength,
  },
): VolumeParts {
  const { count, diameter, length } = size;
  const sheet = count * Math.PI * diameter * gap * length;
  const corners = count * Math.PI * gap ** 2 * length;
  const tip = count * (Math.PI / 4) * (diameter + 2 * gap) ** 2 * gap;
  return { sheet, corners, tip, total: sheet + corners + tip };
}

const keel = designOf(opening, 'keel').keel;
if (keel === undefined) throw new Error('the keel is missing');
const tipLength = keel.tipLength ?? keel.length;
const tipThickness = keel.tipThickness ?? keel.thickness;
/** The way round the keel half-way down, mm. */
const keelRound = keelLength + tipLength + keelThickness + tipThickness;

/** Cement round the keel, which narrows evenly, mm³. */
export function keelParts(gap: number): VolumeParts {
  const sheet = keelRound * keelHeight * gap;
  const corners = 4 * keelHeight * gap ** 2;
  const tip = (tipLength + 2 * gap) * (tipThickness + 2 * gap) * gap;
  return { sheet, corners, tip, total: sheet + corners + tip };
}

export const partsOf = (name: HoldName, gap: number): VolumeParts =>
  name === 'pegs' ? pegParts(gap) : keelParts(gap);

/** As the module of the course has it, mm³, to hold the formula to. */
export const solidVolume = (name: HoldName, gap: number): number =>
  cementVolume({ ...designOf({ ...opening, gap }, name), fitError: 0 }).total;

/** Gaps that the lesson sets side by side, mm: as planned, and with a fit error as large again. */
export const PLANNED = opening.gap;
export const WIDENED = 2 * PLANNED;
export const SMALL_ERROR = PLANNED / 2;

/** How many times as much cement a gap takes as the planned one. */
export const timesOf = (name: HoldName, gap: number): number =>
  partsOf(name, gap).total / partsOf(name, PLANNED).total;

/** First prediction: pegs, the gap doubled. */
export const pegGrowth = timesOf('pegs', WIDENED);
export const keelGrowth = timesOf('keel', WIDENED);
const guesses = { twice: 2, 'more-than-twice': 2.5, 'four-times': 4 } as const;
export const growthOutcome = (Object.keys(guesses) as (keyof typeof guesses)[]).reduce(
  (best, id) =>
    Math.abs(guesses[id] - pegGrowth) < Math.abs(guesses[best] - pegGrowth) ? id : best,
  'twice',
);

/** Cement as it is weighed. */
export const gramsOf = (volume: number): number => volume * DENSITY;
/** Cement under the back of a face, mm³: a layer of this thickness, mm, under an ellipse. Teaching values. */
export const UNDER_BACK = 1;
const FACE = { width: 26, height: 35 } as const;
export const underBack = (Math.PI / 4) * FACE.width * FACE.height * UNDER_BACK;

/*
 * Heat
 */

/** The mantle so thick all round a peg, or beside the keel, through half an hour of setting. */
export function heatAt(
  thickness: number,
  name: HoldName = 'keel',
  change: Partial<GapSetting> = {},
): CementHeat {
  return heatOf({ ...opening, gap: thickness, fitError: 0, ...change }, name);
}

export const THIN = 1;
export const MIDDLE = 2;
export const THICK = 4;
export const thin = heatAt(THIN);
export const middle = heatAt(MIDDLE);
export const thick = heatAt(THICK);
export const thinPeg = heatAt(THIN, 'pegs');
export const thickPeg = heatAt(THICK, 'pegs');

/** °C above the body’s warmth. */
export const riseOf = ({ peakAtBone }: Pick<CementHeat, 'peakAtBone'>): number =>
  peakAtBone - bodyTemperature;
/** Of the thick mantle against the thin one */
export const riseTimes = riseOf(thick) / riseOf(thin);
/** Second prediction: the bone at a mantle of 1 mm, or of 4 mm. */
export const hotterOutcome =
  Math.abs(riseTimes - 1) < 0.05 ? 'alike' : riseTimes < 1 ? 'thin' : 'thick';

const cement = materials['bone cement'];
const bone = materials['cancellous bone'];
const polymer = materials.polyethylene;
type Warmed = Pick<typeof cement, 'conductivity' | 'volumetricHeat'>;
/** How fast warmth spreads, mm²/s, and how much a surface takes at once, J/(mm²·K·√s). */
export const diffusivity = ({ conductivity, volumetricHeat }: Warmed): number =>
  conductivity.value / volumetricHeat.value;
const effusivity = ({ conductivity, volumetricHeat }: Warmed): number =>
  Math.sqrt(conductivity.value * volumetricHeat.value);
export const spread = { cement: diffusivity(cement), bone: diffusivity(bone) };
export const taking = {
  cement: effusivity(cement),
  bone: effusivity(bone),
  polymer: effusivity(polymer),
};

/** Of the heat of setting, if none of it left the cement, °C. */
export const ownRise = totalHeat / cement.volumetricHeat.value;
export const ownPeak = start + ownRise;
/** Time for warmth to cross a mantle, s. */
export const crossing = (thickness: number): number => thickness ** 2 / spread.cement;
/** The middle half of the heat comes within this time, s. */
export const settingSpan = peakTime / 4;

/** Where two thick bodies touch, °C; `share` is the first one’s. */
export const cementShare = taking.cement / (taking.cement + taking.bone);
export const contact = (ofCement: number, ofBone: number): number =>
  cementShare * ofCement + (1 - cementShare) * ofBone;
/** At first touch, and under flat cement without end once it has set. */
export const firstTouch = contact(start, bodyTemperature);
export const ceiling = contact(ownPeak, bodyTemperature);

/** The same keel of metal, and the same mantle colder when it goes in, °C. */
export const COLD = 10;
export const chilled = heatAt(THICK, 'keel', { start: COLD });
export const slower = heatAt(THICK, 'keel', { peakTime: 2 * peakTime });

/** Heats of setting between which print lies, from memory, J/mm³. */
export const leastHeat = 0.1;
export const mostHeat = 0.19;

export const halfOf = (name: HoldName): number => halfPolymer(opening, name);

/*
 * Injury
 */

/** One minute at a steady temperature, as a share of what each criterion takes for harm. */
export function minuteAt(temperature: number): { readonly bone: number; readonly skin: number } {
  const history = { times: [0, 60], temperatures: [temperature, temperature] };
  return {
    bone: cem43(history) / BONE_HEAT_LIMIT,
    skin: arrheniusDamage(history, henriques) / SKIN_BURN_LIMIT,
  };
}

/** What a minute at the quoted limit is by each; and the factor of one degree there. */
export const QUOTED = 47;
export const quotedMinute = minuteAt(QUOTED);
export const perDegree = {
  bone: minuteAt(QUOTED + 1).bone / quotedMinute.bone,
  skin: minuteAt(QUOTED + 1).skin / quotedMinute.skin,
};
/** Temperature that is harm in one minute by the criterion of skin, °C. */
export const skinMinute = lowestWhere((temperature) => minuteAt(temperature).skin >= 1, 43, 70);
/** Thinnest mantle beside the keel at which each criterion says harm, mm. */
export const harmful = {
  bone: lowestWhere((thickness) => heatAt(thickness).injury.isPastBoneLimit, 0.2, 6),
  skin: lowestWhere((thickness) => heatAt(thickness).injury.isPastSkinLimit, 0.2, 6),
  minute: lowestWhere((thickness) => heatAt(thickness).timeAbove47 >= 60, 0.2, 6),
};

/** Where a condition begins to hold, to a five-hundredth of the range. */
function lowestWhere(holds: (value: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  while (high - low > (to - from) / 500) {
    const half = (low + high) / 2;
    if (holds(half)) high = half;
    else low = half;
  }
  return high;
}

/** Row by row as the table has them: mantles beside the keel, mm. */
export const heatRows = [0.5, 1, 1.5, 2, 3, 4].map((thickness) => ({
  thickness,
  heat: heatAt(thickness),
}));

/** A number that may be tiny or large, in a few digits. */
export const rounded = (value: number): string =>
  value < 10 ? String(Number(value.toPrecision(2))) : fixedText(value, 0);

/** The thick mantle with the heats between which print lies. */
export const thickByHeat = {
  least: heatAt(THICK, 'keel', { heat: leastHeat }),
  most: heatAt(THICK, 'keel', { heat: mostHeat }),
};
/** Time for warmth to fill half the keel, s. */
export const fillsKeel = halfOf('keel') ** 2 / diffusivity(polymer);
