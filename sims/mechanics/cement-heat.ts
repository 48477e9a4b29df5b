import { inRange, positive } from '../geometry/numeric.ts';
import { heatInjury, timeAbove, type HeatInjury } from './cement-injury.ts';
import { settingRate, type CementKinetics } from './cement-setting.ts';
import { conduct } from './conduct.ts';
import type { ConductBoundary, Conduction } from './conduct-types.ts';

/** How a material takes heat. */
export interface ThermalProperties {
  /** W/(mm·K), above 0 */
  readonly conductivity: number;
  /** J/(mm³·K), above 0 */
  readonly volumetricHeat: number;
}

type Material = 'polymer' | 'cement' | 'bone';

export interface CementHeatQuestion {
  /** mm, above 0 */
  readonly cementThickness: number;
  /** mm, 0 and up; of a round peg its radius */
  readonly polymerThickness: number;
  /** Bone that is counted, mm, above 0; beyond it bone keeps its temperature. Warmth reaches some 25 mm in half an hour. */
  readonly boneDepth: number;
  /** °C */
  readonly initialTemperatures: Readonly<Record<Material, number>>;
  readonly kinetics: CementKinetics;
  readonly properties: Readonly<Record<Material, ThermalProperties>>;
  /** `flat` layers, as beside a keel or under a back; `round` about the axis of a peg. Left out: flat. */
  readonly shape?: 'flat' | 'round' | undefined;
  /** Far side of flat polymer. Left out: insulated, as the middle of a keel is, warm alike from both sides. */
  readonly boundary?: ConductBoundary | undefined;
  /** s. Left out: 1,800 */
  readonly duration?: number | undefined;
  /** mm. Left out: 0.1 */
  readonly cell?: number | undefined;
  /** s. Left out: 1 */
  readonly step?: number | undefined;
}

export interface CementHeat {
  /** °C through time: where polymer and cement touch, in the middle of the cement, where cement and bone touch */
  readonly histories: {
    readonly times: Float64Array;
    readonly polymer: Float64Array;
    readonly cement: Float64Array;
    readonly bone: Float64Array;
  };
  /** Highest temperature of the bone’s surface, °C, and when, s */
  readonly peakAtBone: number;
  readonly peakTime: number;
  /** Highest temperature anywhere in the cement, °C */
  readonly peakInCement: number;
  /** How long the bone’s surface is above 47 °C and 50 °C, s */
  readonly timeAbove47: number;
  readonly timeAbove50: number;
  /** How far into the bone 47 °C and 50 °C reach, mm; 0 where they do not */
  readonly depthAbove47: number;
  readonly depthAbove50: number;
  /** At the bone’s surface */
  readonly injury: HeatInjury;
  /** The whole field, depths from the far side of the polymer */
  readonly conduction: Conduction;
}

/**
 * Heat of setting cement between polymer and bone.
 *
 * Conduction in one dimension; heat by the clock (see {@link CementKinetics}); nothing carried off by blood, no film between
 * layers, no cement in the pores of the bone. Cement and polymer begin cold, bone warm.
 *
 * @throws RangeError naming the argument, its value and what is allowed
 *
 * Derivation: {@link conduct} with the setting rate as the source of the cement.
 */
export function cementHeat(question: CementHeatQuestion): CementHeat {
  const { cementThickness, polymerThickness, boneDepth, initialTemperatures, properties } =
    question;
  positive('cementThickness', cementThickness, 'mm');
  inRange('polymerThickness', polymerThickness, 0, Infinity, 'mm');
  positive('boneDepth', boneDepth, 'mm');
  const { shape = 'flat', boundary = { insulated: true }, cell = 0.1 } = question;
  const layer = (material: Material, thickness: number) => ({
    thickness,
    conductivity: properties[material].conductivity,
    volumetricHeat: properties[material].volumetricHeat,
    initialTemperature: initialTemperatures[material],
  });
  const conduction = conduct({
    layers: [
      ...(polymerThickness > 0 ? [layer('polymer', polymerThickness)] : []),
      { ...layer('cement', cementThickness), source: settingRate(question.kinetics) },
      layer('bone', boneDepth),
    ],
    boundary: { left: boundary, right: { temperature: initialTemperatures.bone } },
    duration: question.duration ?? 1800,
    cell,
    step: question.step ?? 1,
    innerRadius: shape === 'round' ? 0 : undefined,
  });
  const [polymerSide, boneSide] = conduction.faces.slice(-3);
  if (polymerSide === undefined || boneSide === undefined) throw new RangeError('no faces');
  const { times } = conduction;
  const bone = boneSide.temperatures;
  const atBone = { times, temperatures: bone };
  const peakAtBone = highest(bone);
  return {
    histories: {
      times,
      polymer: polymerSide.temperatures,
      cement: through(conduction, polymerSide.depth + cementThickness / 2),
      bone,
    },
    peakAtBone,
    peakTime: times[bone.indexOf(peakAtBone)] ?? 0,
    peakInCement: peakBetween(conduction, polymerSide.depth, boneSide.depth),
    timeAbove47: timeAbove(atBone, 47),
    timeAbove50: timeAbove(atBone, 50),
    depthAbove47: depthAbove(conduction, boneSide.depth, peakAtBone, 47),
    depthAbove50: depthAbove(conduction, boneSide.depth, peakAtBone, 50),
    injury: heatInjury(atBone),
    conduction,
  };
}

function highest(values: Iterable<number>): number {
  let most = -Infinity;
  for (const value of values) most = Math.max(most, value);
  return most;
}

/** History at a depth, between the middles of two cells. */
function through({ depths, temperatures }: Conduction, depth: number): Float64Array {
  const after = Math.max(
    1,
    depths.findIndex((at) => at >= depth),
  );
  const [a, b] = [depths[after - 1] ?? 0, depths[after] ?? 0];
  const part = (depth - a) / (b - a);
  return Float64Array.from(
    temperatures,
    (row) => (row[after - 1] ?? NaN) * (1 - part) + (row[after] ?? NaN) * part,
  );
}

function peakBetween({ depths, temperatures }: Conduction, from: number, to: number): number {
  const [first, last] = [
    depths.findIndex((at) => at > from),
    depths.findLastIndex((at) => at < to),
  ];
  return highest(temperatures.map((row) => highest(row.subarray(first, last + 1))));
}

/** How far from a face a temperature is reached at any time, where the face itself reaches `peak`. */
function depthAbove(
  { depths, temperatures }: Conduction,
  face: number,
  peak: number,
  limit: number,
): number {
  if (peak < limit) return 0;
  let [before, warmth] = [face, peak];
  for (let i = depths.findIndex((at) => at > face); i < depths.length; i++) {
    const here = highest(temperatures.map((row) => row[i] ?? NaN));
    const at = depths[i] ?? NaN;
    if (here < limit) return before + ((at - before) * (warmth - limit)) / (warmth - here) - face;
    [before, warmth] = [at, here];
  }
  return before - face;
}
