import {
  choiceField,
  numberField,
  readUrlState,
  switchField,
  writeUrlState,
  type ReadState,
  type UrlFields,
} from '../../shared/url-state.ts';
import { defaultLayer, layerRanges, type LayerSetting } from './layer.ts';
import { defaultPair, pairRanges, type PairSetting } from './pair-ranges.ts';

/** What one set of curves is drawn from. */
export interface CurveSetting extends PairSetting, LayerSetting {}

/** Everything a visitor can set on Two Curves. */
export interface TwoCurvesSetting extends CurveSetting {
  /** A setting kept to compare with. */
  readonly kept: CurveSetting | null;
}

export const defaultCurves: CurveSetting = { ...defaultPair, ...defaultLayer };
export const defaultTwoCurves: TwoCurvesSetting = { ...defaultCurves, kept: null };

const CHANGES = ['socket', 'ball'] as const;
const HELDS = ['width', 'depth', 'arc'] as const;

function curveFields(prefix: '' | 'kept-'): UrlFields<CurveSetting> {
  const named = prefix === '' ? '' : 'kept ';
  const pair = (key: string, name: string, field: keyof typeof pairRanges) =>
    numberField(prefix + key, named + name, pairRanges[field], defaultPair[field]);
  const layer = (key: keyof LayerSetting, name: string) =>
    numberField(prefix + key, named + name, layerRanges[key], defaultLayer[key]);
  return {
    change: choiceField(`${prefix}change`, `${named}curve to change`, CHANGES, defaultPair.change),
    held: choiceField(`${prefix}hold`, `${named}measure to hold`, HELDS, defaultPair.held),
    ballDiameter: pair('ball', 'ball diameter', 'ballDiameter'),
    radius: pair('radius', 'radius of curvature', 'radius'),
    mismatch: pair('mismatch', 'radial mismatch', 'mismatch'),
    width: pair('width', 'width', 'width'),
    depth: pair('depth', 'depth', 'depth'),
    arc: pair('arc', 'arc', 'arc'),
    load: layer('load', 'load'),
    thickness: layer('thickness', 'thickness'),
    modulus: layer('modulus', 'Young’s modulus'),
    poisson: layer('poisson', 'Poisson’s ratio'),
  };
}

const ownFields = curveFields('');
const keptFields = curveFields('kept-');
const isKeptField = { isKept: switchField('kept', 'kept curves', false) };

/** Reads the bench's whole setting from a link. */
export function readTwoCurvesLink(query: string): ReadState<TwoCurvesSetting> {
  const own = readUrlState(ownFields, query);
  const { isKept } = readUrlState(isKeptField, query).state;
  const kept = readUrlState(keptFields, query);
  return {
    state: { ...own.state, kept: isKept ? kept.state : null },
    problem: [own.problem, readUrlState(isKeptField, query).problem, isKept ? kept.problem : '']
      .filter((problem) => problem !== '')
      .join(' '),
  };
}

/** The bench's whole setting as a link's query; only what counts is written. */
export function writeTwoCurvesLink(setting: TwoCurvesSetting): string {
  const { kept } = setting;
  return [
    writeUrlState(ownFields, countingOnly(setting)),
    writeUrlState(isKeptField, { isKept: kept !== null }),
    kept === null ? '' : writeUrlState(keptFields, countingOnly(kept)),
  ]
    .filter((part) => part !== '')
    .join('&');
}

/** A setting without a kept one, and what does not count at its default. */
export function countingOnly(setting: CurveSetting): CurveSetting {
  const { change, held, mismatch, load, thickness, modulus, poisson } = setting;
  const staying = change === 'socket' ? 'ballDiameter' : 'radius';
  return {
    ...defaultCurves,
    ...{ change, held, mismatch, load, thickness, modulus, poisson },
    [staying]: setting[staying],
    [held]: setting[held],
  };
}
