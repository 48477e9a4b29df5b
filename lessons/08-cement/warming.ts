import { profileAt, type HeatPoint } from '../../sims/benches/gap-and-heat/heat.ts';
import type { HoldName } from '../../sims/benches/gap-and-heat/settings.ts';
import { BONE_HEAT_LIMIT, SKIN_BURN_LIMIT, type CementHeat } from '../../sims/mechanics/index.ts';
import {
  heatAt,
  middle,
  MIDDLE,
  minuteAt,
  opening,
  THICK,
  thick,
  thickPeg,
  THIN,
  thin,
  thinPeg,
} from './cements.ts';

/*
 * The lesson’s curves of heat, many solutions each: apart from the numbers in its text, which come at once.
 */

/** Temperatures through keel, cement and bone at some moments, s. */
export interface Profiles {
  readonly thickness: number;
  readonly moments: readonly {
    readonly time: number;
    readonly points: readonly HeatPoint[];
  }[];
}

export const MOMENTS = [60, 240, 360, 600, 1200] as const;
/** Bone that is shown, mm. */
export const BONE_SHOWN = 12;

const profilesOf = (thickness: number, heat: CementHeat): Profiles => ({
  thickness,
  moments: MOMENTS.map((time) => ({
    time,
    points: profileAt(
      heat,
      { ...opening, measured: 'keel', gap: thickness, fitError: 0 },
      time,
    ).filter(([depth]) => depth <= BONE_SHOWN),
  })),
});
export const profiles = [profilesOf(THIN, thin), profilesOf(THICK, thick)];

/** The bone’s surface through time, minutes and °C, under three mantles, beside the keel and round a peg. */
export interface History {
  readonly thickness: number;
  readonly heat: CementHeat;
  readonly points: readonly (readonly [minutes: number, temperature: number])[];
}

/** Every so many moments are enough for a curve. */
const EVERY = 5;

function historyOf(thickness: number, heat: CementHeat): History {
  const { times, bone } = heat.histories;
  const points = Array.from(times, (time, i) => [time / 60, bone[i] ?? NaN] as const);
  return { thickness, heat, points: points.slice(1).filter((_, i) => i % EVERY === 0) };
}

export const histories: Readonly<Record<HoldName, readonly History[]>> = {
  keel: [historyOf(THIN, thin), historyOf(MIDDLE, middle), historyOf(THICK, thick)],
  pegs: [
    historyOf(THIN, thinPeg),
    historyOf(MIDDLE, heatAt(MIDDLE, 'pegs')),
    historyOf(THICK, thickPeg),
  ],
};

/** What half an hour under a mantle does to the bone’s surface. */
export interface Dose {
  readonly thickness: number;
  readonly heat: CementHeat;
}

export const THICKEST = 5;
const STEPS = 25;
const dosesOf = (name: HoldName): readonly Dose[] =>
  Array.from({ length: STEPS }, (_, i) => {
    const thickness = (THICKEST * (i + 1)) / STEPS;
    return { thickness, heat: heatAt(thickness, name) };
  });
export const doses: Readonly<Record<HoldName, readonly Dose[]>> = {
  keel: dosesOf('keel'),
  pegs: dosesOf('pegs'),
};

/** As steep as the keel’s curve of peaks begins, °C a mm, and from where. */
const [first, second] = doses.keel;
if (first === undefined || second === undefined) throw new Error('the curve is too short');
export const steepness =
  (second.heat.peakAtBone - first.heat.peakAtBone) / (second.thickness - first.thickness);
export const begins = first.heat.peakAtBone - steepness * first.thickness;

/** One minute at a temperature as a share of harm by each criterion. */
export const COOLEST = 43;
export const HOTTEST = 58;
export const minutes = Array.from({ length: HOTTEST - COOLEST + 1 }, (_, i) => ({
  temperature: COOLEST + i,
  ...minuteAt(COOLEST + i),
}));

/** The half hour beside the keel as such a share. */
export const halfHours = doses.keel.map(({ thickness, heat: { injury } }) => ({
  thickness,
  bone: injury.cem43 / BONE_HEAT_LIMIT,
  skin: injury.arrhenius / SKIN_BURN_LIMIT,
}));
