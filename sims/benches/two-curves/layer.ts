import { materials } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';

/** The load and the plastic under it. */
export interface LayerSetting {
  /** N, along the centre line. */
  readonly load: number;
  /** mm */
  readonly thickness: number;
  /** Young's modulus, MPa. */
  readonly modulus: number;
  readonly poisson: number;
}

export const layerRanges: Readonly<Record<keyof LayerSetting, Range>> = {
  load: { min: 50, max: 2000, step: 10, digits: 0, unit: 'N' },
  thickness: { min: 2, max: 10, step: 0.1, digits: 1, unit: 'mm' },
  modulus: { min: 200, max: 2200, step: 10, digits: 0, unit: 'MPa' },
  poisson: { min: 0.3, max: 0.49, step: 0.01, digits: 2, unit: '' },
};

export const layerNames: Readonly<Record<keyof LayerSetting, string>> = {
  load: 'Load, pressing in',
  thickness: 'Thickness of the plastic',
  modulus: 'Young’s modulus',
  poisson: 'Poisson’s ratio',
};

const { youngsModulus, poissonRatio } = materials.polyethylene;

/** A visitor finds these among the facts of the lessons; a test holds the two together. */
export const defaultLayer: LayerSetting = {
  load: 500,
  thickness: 4,
  modulus: youngsModulus.value,
  poisson: poissonRatio.value,
};

/** The layer as the mechanics asks for it. */
export function layerOf({ thickness, modulus, poisson }: LayerSetting): {
  readonly thickness: number;
  readonly modulus: number;
  readonly poisson: number;
} {
  return { thickness, modulus, poisson };
}
