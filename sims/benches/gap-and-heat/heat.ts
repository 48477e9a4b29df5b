import {
  cementHeat,
  materials,
  type CementHeat,
  type ThermalProperties,
} from '../../mechanics/index.ts';
import { thicknessOf } from './mantle.ts';
import type { GapSetting, HoldName } from './settings.ts';

export const BODY_TEMPERATURE = 37;
/** Bone that is counted, mm. */
const BONE_DEPTH = 25;
/** Finer than this moves the peak by less than a hundredth of a degree. */
const STEP = 2;

const propertiesOf = (name: keyof typeof materials): ThermalProperties => ({
  conductivity: materials[name].conductivity.value,
  volumetricHeat: materials[name].volumetricHeat.value,
});

/** Half of what stands between cement and cement, mm: from the axis of a peg, or the middle of a keel, to its side. */
export function halfPolymer(
  { pegDiameter, keelThickness }: Pick<GapSetting, 'pegDiameter' | 'keelThickness'>,
  name: HoldName,
): number {
  return (name === 'pegs' ? pegDiameter : keelThickness) / 2;
}

/** Half an hour of setting round a peg, or beside a keel; `setting` must be sound. */
export function heatOf(setting: Omit<GapSetting, 'measured' | 'time'>, name: HoldName): CementHeat {
  return cementHeat({
    shape: name === 'pegs' ? 'round' : 'flat',
    polymerThickness: halfPolymer(setting, name),
    cementThickness: setting.gap + setting.fitError,
    boneDepth: BONE_DEPTH,
    initialTemperatures: {
      polymer: setting.start,
      cement: setting.start,
      bone: BODY_TEMPERATURE,
    },
    kinetics: { totalHeat: setting.heat, peakTime: setting.peakTime },
    properties: {
      polymer: propertiesOf('polyethylene'),
      cement: propertiesOf('bone cement'),
      bone: propertiesOf('cancellous bone'),
    },
    step: STEP,
  });
}

/** A place and its temperature: mm from the bone’s surface, negative in cement and polymer; °C. */
export type HeatPoint = readonly [depth: number, temperature: number];

const rowAt = ({ conduction }: CementHeat, time: number): number =>
  Math.min(conduction.times.length - 1, Math.round(time / STEP));

/** What the thermometer at the bone shows at a time, °C. */
export function boneAt(heat: CementHeat, time: number): number {
  return heat.histories.bone[rowAt(heat, time)] ?? NaN;
}

/** Temperatures through polymer, cement and bone at a time. */
export function profileAt(
  heat: CementHeat,
  setting: GapSetting,
  time: number,
): readonly HeatPoint[] {
  return through(heat, setting, (row) => row, rowAt(heat, time));
}

/** The highest each place gets in the half hour. */
export function highestOf(heat: CementHeat, setting: GapSetting): readonly HeatPoint[] {
  const { temperatures, depths } = heat.conduction;
  const highest = new Float64Array(depths.length).fill(-Infinity);
  for (const row of temperatures) {
    for (let i = 0; i < highest.length; i++) {
      highest[i] = Math.max(highest[i] ?? 0, row[i] ?? 0);
    }
  }
  return through(heat, setting, () => highest, 0);
}

function through(
  { conduction }: CementHeat,
  setting: GapSetting,
  pick: (row: Float64Array) => Float64Array,
  n: number,
): readonly HeatPoint[] {
  const { depths, temperatures } = conduction;
  const row = pick(temperatures[n] ?? new Float64Array());
  const surface = halfPolymer(setting, setting.measured) + thicknessOf(setting);
  return Array.from(depths, (depth, i) => [depth - surface, row[i] ?? NaN] as const);
}
