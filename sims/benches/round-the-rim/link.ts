import {
  choiceField,
  numberField,
  readUrlState,
  switchField,
  writeUrlState,
  type ReadState,
  type UrlFields,
} from '../../shared/url-state.ts';
import { defaultRim } from './presets.ts';
import {
  bearingRange,
  FARTHEST,
  fieldNames,
  rimRanges,
  type RimField,
  type RimSetting,
} from './setting.ts';

const usual = defaultRim;
const number = (key: string, field: RimField) =>
  numberField(key, fieldNames[field], rimRanges[field], usual[field]);
const translations = { min: -FARTHEST, max: FARTHEST, step: 0.05, digits: 2, unit: 'mm' };

const fields: UrlFields<RimSetting> = {
  outline: choiceField('outline', 'outline', ['pear', 'ellipse', 'circle'], usual.outline),
  height: number('height', 'height'),
  width: number('width', 'width'),
  upperWidth: number('upper', 'upperWidth'),
  sameRadius: switchField('one-radius', 'same radius both ways', usual.sameRadius),
  radiusAP: number('radius-ap', 'radiusAP'),
  radiusSI: number('radius-si', 'radiusSI'),
  lip: switchField('lip', 'lip', usual.lip),
  lipHeight: number('lip-height', 'lipHeight'),
  lipWidth: number('lip-width', 'lipWidth'),
  defect: choiceField('defect', 'rim defect', ['none', 'cut', 'segment'], usual.defect),
  clock: number('clock', 'clock'),
  defectDepth: number('defect-depth', 'defectDepth'),
  ballDiameter: number('ball', 'ballDiameter'),
  bearing: numberField('direction', 'direction', bearingRange, usual.bearing),
  translation: numberField('at', 'translation', translations, usual.translation),
  showsPublished: switchField('published', 'published ratios', usual.showsPublished),
};

/** Reads the bench's whole setting from a link. */
export function readRimLink(query: string): ReadState<RimSetting> {
  return readUrlState(fields, query);
}

/** The bench's whole setting as a link's query; what does not count in it is left out. */
export function writeRimLink(setting: RimSetting): string {
  const { outline, sameRadius, lip, defect } = setting;
  const { height, upperWidth, radiusAP, lipHeight, lipWidth, clock, defectDepth } = usual;
  return writeUrlState(fields, {
    ...setting,
    ...(outline === 'circle' ? { height } : {}),
    ...(outline === 'pear' ? {} : { upperWidth }),
    ...(sameRadius ? { radiusAP } : {}),
    ...(lip ? {} : { lipHeight, lipWidth }),
    ...(defect === 'none' ? { clock, defectDepth } : {}),
  });
}
