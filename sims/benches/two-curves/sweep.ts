import { peakStabilityRatio, rimContactTranslation } from '../../geometry/index.ts';
import { elasticStabilityCurve, hertzContact } from '../../mechanics/index.ts';
import { layerOf, type LayerSetting } from './layer.ts';
import { pairAt, type Pair } from './pair.ts';
import { mismatchLimits } from './pair-limits.ts';
import { pairRanges, type PairSetting } from './pair-ranges.ts';

/** What the geometry says at one mismatch. */
export interface ShapeRow {
  /** Radial, mm. */
  readonly mismatch: number;
  /** Translation before the ball loads the rim, mm. */
  readonly play: number;
  readonly peakRatio: number;
  readonly depth: number;
}

/** What the plastic feels at one mismatch, the ball centred. */
export interface PressureRow {
  /** Radial, mm. */
  readonly mismatch: number;
  /** Peak on a thin elastic layer, MPa; null where the layer cannot carry the load. */
  readonly layer: number | null;
  /** Hertz's peak on a block without end, MPa; null where the patch is too wide for it. */
  readonly hertz: number | null;
}

export type SweepSetting = PairSetting & LayerSetting;

/** Rows of a curve. */
export const ROWS = 41;

export function shapeRow({ socket, ballRadius, mismatch }: Pair): ShapeRow {
  return {
    mismatch,
    play: rimContactTranslation(socket, ballRadius),
    peakRatio: peakStabilityRatio(socket),
    depth: socket.depth,
  };
}

export function pressureRow(
  { socket, ballRadius, mismatch }: Pair,
  layer: LayerSetting,
): PressureRow {
  const [centred] = elasticStabilityCurve({
    socket,
    ballRadius,
    ...layerOf(layer),
    compressiveLoad: layer.load,
    translations: [0],
  });
  const { hertz, domain } = hertzContact({
    ballRadius,
    socketRadius: socket.curvatureRadius,
    ...layerOf(layer),
    load: layer.load,
  });
  return {
    mismatch,
    layer: centred?.peakPressure ?? null,
    hertz: domain.isSmallPatch ? (hertz?.peakPressure ?? null) : null,
  };
}

export function shapeRows(setting: PairSetting): readonly ShapeRow[] {
  return mismatches(setting).map((mismatch) => shapeRow(pairAt(setting, mismatch)));
}

export function pressureRows(setting: SweepSetting): readonly PressureRow[] {
  return mismatches(setting).map((mismatch) => pressureRow(pairAt(setting, mismatch), setting));
}

/** Mismatches for a curve, mm: closer together where the pressure is steepest, near none. */
export function mismatches(setting: PairSetting): readonly number[] {
  const { min, max } = mismatchLimits(setting);
  const { max: far } = pairRanges.mismatch;
  const between = Array.from({ length: ROWS }, (_, i) => far * (i / (ROWS - 1)) ** 2).filter(
    (mismatch) => mismatch > min && mismatch < max,
  );
  return [min, ...between, max];
}
