import {
  numberField,
  choiceField,
  readUrlState,
  writeUrlState,
  type ReadState,
  type UrlFields,
} from '../../shared/url-state.ts';
import type { Range } from '../../shared/range.ts';
import { defaultLayer, layerRanges, type LayerSetting } from '../two-curves/layer.ts';
import { defaultPair, pairRanges, type PairSetting } from '../two-curves/pair-ranges.ts';

/** Everything a visitor can set on Pressure Print. */
export interface PrintSetting
  extends
    Pick<PairSetting, 'held' | 'ballDiameter' | 'mismatch' | 'width' | 'depth' | 'arc'>,
    LayerSetting {
  /** Of the ball's centre from the centre line, mm. */
  readonly translation: number;
}

const { held, ballDiameter, mismatch, width, depth, arc } = defaultPair;

export const defaultPrint: PrintSetting = {
  ...{ held, ballDiameter, mismatch, width, depth, arc },
  ...defaultLayer,
  translation: 1,
};

/** The translations a socket has room for; the last step may fall short of the rim, which the range's end is. */
export function translationRange(socketWidth: number): Range {
  return { min: 0, max: Number((socketWidth / 2).toFixed(4)), step: 0.05, digits: 2, unit: 'mm' };
}

/** The pair of a print: of the two curves it is always the socket's that is found from the rest. */
export function pairSettingOf(setting: PrintSetting): PairSetting {
  return { ...defaultPair, ...setting, change: 'socket' };
}

const pair = (key: string, name: string, field: keyof typeof pairRanges & keyof PrintSetting) =>
  numberField(key, name, pairRanges[field], defaultPrint[field]);
const layer = (key: keyof LayerSetting, name: string) =>
  numberField(key, name, layerRanges[key], defaultPrint[key]);

const fields: UrlFields<PrintSetting> = {
  ballDiameter: pair('ball', 'ball diameter', 'ballDiameter'),
  mismatch: pair('mismatch', 'radial mismatch', 'mismatch'),
  held: choiceField('by', 'measure of the socket', ['width', 'depth', 'arc'], defaultPrint.held),
  width: pair('width', 'width', 'width'),
  depth: pair('depth', 'depth', 'depth'),
  arc: pair('arc', 'arc', 'arc'),
  load: layer('load', 'load'),
  thickness: layer('thickness', 'thickness'),
  modulus: layer('modulus', 'Young’s modulus'),
  poisson: layer('poisson', 'Poisson’s ratio'),
  translation: numberField(
    'at',
    'translation',
    translationRange(pairRanges.width.max),
    defaultPrint.translation,
  ),
};

/** Reads the bench's whole setting from a link. */
export function readPrintLink(query: string): ReadState<PrintSetting> {
  return readUrlState(fields, query);
}

/** The bench's whole setting as a link's query; of width, depth and arc only the one that gives the socket is written. */
export function writePrintLink(setting: PrintSetting): string {
  const { held: by } = setting;
  const unsaid = { ...setting, width, depth, arc };
  return writeUrlState(fields, { ...unsaid, [by]: setting[by] });
}
