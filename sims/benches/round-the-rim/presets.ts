import type { RimSetting, RimShape } from './setting.ts';

/** A shape to start from, and in words where its numbers come from. */
export interface Preset {
  readonly id: 'bone' | 'lip' | 'worn' | 'round';
  readonly name: string;
  readonly origin: string;
  readonly shape: RimShape;
}

/** Means of published measurements; the radius from front to back is a teaching value, as is the lip's width. */
const bone: RimShape = {
  outline: 'pear',
  height: 35.1,
  width: 26,
  upperWidth: 19.5,
  sameRadius: false,
  radiusAP: 41,
  radiusSI: 33.4,
  lip: false,
  lipHeight: 0.8,
  lipWidth: 4,
  defect: 'none',
  clock: 3,
  defectDepth: 6,
  ballDiameter: 48.2,
};

/** By how much a socket is wider with its lip: the means with and without it, 31.9 and 28 mm. */
const LIP_WIDENS = 3.9;

export const presets: readonly Preset[] = [
  {
    id: 'bone',
    name: 'Bone, mean anatomy',
    origin:
      'Height and both widths: bony faces of 501 scapulae. Radius top to bottom, 33.4 mm, and ball: 43 shoulders. All read as ' +
      'abstracts. The radius front to back, 41 mm, is a teaching value: that way the curve is flatter.',
    shape: bone,
  },
  {
    id: 'lip',
    name: 'With its lip',
    origin:
      'The mean bone, 3.9 mm higher and wider: the difference of mean widths with and without the lip in 100 shoulders. The lip rises so ' +
      'far that the depth top to bottom is 7.1 mm, the mean of 43 shoulders. Both read as abstracts. Its width, 4 mm, is a teaching value.',
    shape: {
      ...bone,
      height: bone.height + LIP_WIDENS,
      width: bone.width + LIP_WIDENS,
      upperWidth: bone.upperWidth + LIP_WIDENS,
      lip: true,
    },
  },
  {
    id: 'worn',
    name: 'Front rim worn',
    origin:
      'The mean bone without the outer 6 mm at 3 o’clock: the defect from which cadaver shoulders were clearly less stable (read as an abstract).',
    shape: { ...bone, defect: 'cut' },
  },
  {
    id: 'round',
    name: 'Round component',
    origin:
      'A circle 30 mm across with one radius, 3 mm more than that of its ball of 48 mm: teaching values all.',
    shape: {
      ...bone,
      outline: 'circle',
      height: 30,
      width: 30,
      upperWidth: 24,
      sameRadius: true,
      radiusAP: 27,
      radiusSI: 27,
      ballDiameter: 48,
    },
  },
];

export const defaultShape = bone;

/** Opens with the ball on its way forward and down. */
export const defaultRim: RimSetting = {
  ...bone,
  bearing: 315,
  translation: 6,
  showsPublished: true,
};

/** The preset a shape is exactly, or undefined. */
export function presetOf(shape: RimShape): Preset | undefined {
  const names = Object.keys(bone) as (keyof RimShape)[];
  return presets.find((preset) => names.every((name) => preset.shape[name] === shape[name]));
}
