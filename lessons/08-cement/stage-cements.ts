import { factRange, factValue } from '../fact-value.ts';
import {
  bodyTemperature,
  ceiling,
  crossing,
  heatAt,
  pegParts,
  PLANNED,
  QUOTED,
  riseOf,
  settingSpan,
  skinMinute,
  THICK,
  thick,
  thickByHeat,
  THIN,
  thin,
  totalHeat,
  WIDENED,
} from './cements.ts';

/*
 * What the lecture shows, from the lesson's own numbers.
 */

/** The ring of the pegs at both gaps, and how its two parts grow. */
export const rings = [PLANNED, WIDENED].map((gap) => ({ gap, parts: pegParts(gap) }));
const [before, after] = [pegParts(PLANNED), pegParts(WIDENED)];
export const growth = {
  sheet: after.sheet / before.sheet,
  corners: after.corners / before.corners,
};

/** Mantles beside the keel, mm: what each brings to a square millimetre of bone, J, and how far it warms it, °C. */
export const doors = [
  { thickness: THIN, warmed: thin },
  { thickness: THICK, warmed: thick },
].map(({ thickness, warmed }) => ({
  thickness,
  heat: totalHeat * thickness,
  rise: riseOf(warmed),
}));

/** Time for warmth to cross a mantle, s, against that in which half of the heat is made. */
export const crossings = [1, 2, 3, 4].map((thickness) => ({
  thickness,
  time: crossing(thickness),
  isLeft: crossing(thickness) > settingSpan,
}));

/** Peak at the bone beside the keel against the thickness of its cement, mm and °C. */
const thicknesses = Array.from({ length: 24 }, (_, i) => (i + 1) / 4);
export const keelPeaks = [
  [0, bodyTemperature] as const,
  ...thicknesses.map((thickness) => [thickness, heatAt(thickness).peakAtBone] as const),
];
/** Of the thick mantle at the heats of setting between which print lies, °C. */
export const thickPeaks = [thickByHeat.least.peakAtBone, thickByHeat.most.peakAtBone];

/** What each rule takes for harm within a minute, °C. */
export const minuteOfHarm = { bone: QUOTED, skin: skinMinute } as const;

/** One row of measured or computed degrees. */
export interface DegreeRow {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** A mean, or a single number */
  readonly mean?: number;
}

const row = (name: string, range: readonly [number, number], mean?: number): DegreeRow => ({
  name,
  from: range[0],
  to: range[1],
  ...(mean === undefined ? {} : { mean }),
});
const patients = factValue('highest-in-patients');
/** Highest temperatures and rises that were measured, and this model under thin and thick cement, °C. */
export const measured = {
  highest: [
    row('camera, cadavers', factRange('bone-surface-heat'), factValue('bone-surface-heat')),
    row('probes, patients', [patients, patients], patients),
    row('this model', [thin.peakAtBone, thick.peakAtBone]),
  ],
  rise: [
    row('sensors, cadavers', factRange('keel-warming'), factValue('keel-warming')),
    row('probes, patients', factRange('rise-in-patients')),
    row('this model', [riseOf(thin), riseOf(thick)]),
  ],
} as const;
export const flatCeiling = { peak: ceiling, rise: ceiling - bodyTemperature };
