import type { Range } from '../../shared/range.ts';
import { choiceField, numberField, type UrlFields } from '../../shared/url-state.ts';
import { cupRanges, defaultCup, type CupSetting } from '../shared/cup-setting.ts';
import { pullNames, type PlaneName, type PullId } from './planes.ts';

type PullSizes = { readonly [Id in PullId as `${Id}Size`]: number };
type PullTurns = { readonly [Id in PullId as `${Id}Turn`]: number };

/** Everything on the bench that a visitor sets. Sizes N; turns degrees from straight medial, positive as the plane says. */
export interface ForceSetting extends CupSetting, PullSizes, PullTurns {
  readonly plane: PlaneName;
  /** Degrees; retroversion is positive. */
  readonly version: number;
  /** Degrees; a face that looks up is positive. */
  readonly inclination: number;
  /** Coulomb coefficient. */
  readonly friction: number;
}

export const tiltRange: Range = { min: -25, max: 35, step: 0.5, digits: 1, unit: '°' };
export const sizeRange: Range = { min: 0, max: 400, step: 5, digits: 0, unit: 'N' };
export const turnRange: Range = { min: -80, max: 80, step: 1, digits: 0, unit: '°' };
export const frictionRange: Range = { min: 0, max: 0.3, step: 0.01, digits: 2, unit: '' };

/** Pulls that balance: teaching values, invented so that the numbers are round. */
export const balancedPulls: PullSizes & PullTurns = {
  frontCuffSize: 200,
  frontCuffTurn: 30,
  backCuffSize: 200,
  backCuffTurn: -30,
  othersSize: 80,
  othersTurn: 0,
  upperCuffSize: 80,
  upperCuffTurn: 0,
  lowerCuffSize: 200,
  lowerCuffTurn: -40,
  deltoidSize: 200,
  deltoidTurn: 40,
};

/** A socket turned as far as its neighbours on the list of situations, so that the first picture shows a tilted arc. */
export const defaultSetting: ForceSetting = {
  ...defaultCup,
  ...balancedPulls,
  plane: 'above',
  version: 15,
  inclination: 0,
  friction: 0,
};

function sizeField(id: PullId, key: string) {
  return numberField(key, `${pullNames[id]}, pull`, sizeRange, balancedPulls[`${id}Size`]);
}

function turnField(id: PullId, key: string) {
  const name = `${pullNames[id]}, direction`;
  return numberField(`${key}-turn`, name, turnRange, balancedPulls[`${id}Turn`]);
}

const cup = cupRanges;
const usual = defaultSetting;

export const forceFields: UrlFields<ForceSetting> = {
  plane: choiceField('seen', 'plane', ['above', 'front'], usual.plane),
  version: numberField('version', 'version', tiltRange, usual.version),
  inclination: numberField('inclination', 'inclination', tiltRange, usual.inclination),
  frontCuffSize: sizeField('frontCuff', 'front-cuff'),
  frontCuffTurn: turnField('frontCuff', 'front-cuff'),
  backCuffSize: sizeField('backCuff', 'back-cuff'),
  backCuffTurn: turnField('backCuff', 'back-cuff'),
  othersSize: sizeField('others', 'others'),
  othersTurn: turnField('others', 'others'),
  upperCuffSize: sizeField('upperCuff', 'upper-cuff'),
  upperCuffTurn: turnField('upperCuff', 'upper-cuff'),
  lowerCuffSize: sizeField('lowerCuff', 'lower-cuff'),
  lowerCuffTurn: turnField('lowerCuff', 'lower-cuff'),
  deltoidSize: sizeField('deltoid', 'deltoid'),
  deltoidTurn: turnField('deltoid', 'deltoid'),
  ballDiameter: numberField('ball', 'ball diameter', cup.ballDiameter, usual.ballDiameter),
  width: numberField('width', 'socket width', cup.width, usual.width),
  shapeBy: choiceField('shape', 'shape by', ['depth', 'radius', 'mismatch'], usual.shapeBy),
  depth: numberField('depth', 'depth', cup.depth, usual.depth),
  radius: numberField('radius', 'radius of curvature', cup.radius, usual.radius),
  mismatch: numberField('mismatch', 'diametral mismatch', cup.mismatch, usual.mismatch),
  friction: numberField('friction', 'friction', frictionRange, usual.friction),
};
