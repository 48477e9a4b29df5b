import { choiceField, numberField, type UrlFields } from '../../shared/url-state.ts';
import type { Range } from '../../shared/range.ts';
import { cupRanges, defaultCup, type CupSetting } from '../shared/cup-setting.ts';

/** Everything on the bench that a visitor sets. */
export interface PushSetting extends CupSetting {
  /** N */
  readonly compressiveLoad: number;
  /** N, held by hand */
  readonly sideForce: number;
  /** Coulomb coefficient */
  readonly friction: number;
}

export const pushRanges: Readonly<Record<'compressiveLoad' | 'friction', Range>> = {
  compressiveLoad: { min: 20, max: 800, step: 10, digits: 0, unit: 'N' },
  friction: { min: 0, max: 0.3, step: 0.01, digits: 2, unit: '' },
};

/** The side force may reach this many times the compressive load: beyond what the deepest usual cup can hold. */
const MOST_RATIO = 1.5;

export function sideForceRange(compressiveLoad: number): Range {
  return { min: 0, max: Math.round(compressiveLoad * MOST_RATIO), step: 1, digits: 0, unit: 'N' };
}

/** 50 N is the lighter of the two loads of the cadaver experiments the lesson cites. */
export const defaultSetting: PushSetting = {
  ...defaultCup,
  compressiveLoad: 50,
  sideForce: 0,
  friction: 0,
};

export const pushFields: UrlFields<PushSetting> = {
  ballDiameter: numberField(
    'ball',
    'ball diameter',
    cupRanges.ballDiameter,
    defaultCup.ballDiameter,
  ),
  width: numberField('width', 'socket width', cupRanges.width, defaultCup.width),
  shapeBy: choiceField('shape', 'shape by', ['depth', 'radius', 'mismatch'], defaultCup.shapeBy),
  depth: numberField('depth', 'depth', cupRanges.depth, defaultCup.depth),
  radius: numberField('radius', 'radius of curvature', cupRanges.radius, defaultCup.radius),
  mismatch: numberField('mismatch', 'diametral mismatch', cupRanges.mismatch, defaultCup.mismatch),
  compressiveLoad: numberField('press', 'press', pushRanges.compressiveLoad, 50),
  sideForce: numberField('push', 'push', sideForceRange(pushRanges.compressiveLoad.max), 0),
  friction: numberField('friction', 'friction', pushRanges.friction, 0),
};
