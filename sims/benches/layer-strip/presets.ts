import { defaultStrip, type StripSetting } from './settings.ts';

export interface Preset {
  readonly id: string;
  readonly name: string;
  /** What it stands for. */
  readonly origin: string;
  readonly setting: StripSetting;
}

/** Thicknesses are teaching values. */
export const presets: readonly Preset[] = [
  {
    id: 'metal-back',
    name: 'Plastic on metal',
    origin: 'A plastic insert on a metal back.',
    setting: defaultStrip,
  },
  {
    id: 'cemented',
    name: 'Plastic on cement',
    origin: 'The back of an all-plastic socket on its cement.',
    setting: { ...defaultStrip, lower: 'bone cement', lowerThickness: 1.5 },
  },
  {
    id: 'cement-bone',
    name: 'Cement on bone',
    origin: 'The cement on the cancellous bone that it has run into.',
    setting: {
      ...defaultStrip,
      upper: 'bone cement',
      upperThickness: 1.5,
      lower: 'cancellous bone',
      lowerThickness: 10,
    },
  },
  {
    id: 'metal-bone',
    name: 'Metal on bone',
    origin: 'A metal back that bone has grown onto.',
    setting: {
      ...defaultStrip,
      upper: 'titanium alloy',
      upperThickness: 3,
      lower: 'cancellous bone',
      lowerThickness: 10,
    },
  },
  {
    id: 'equals',
    name: 'Equals',
    origin: 'Twice the same: no step in stiffness, and the joint has peaks all the same.',
    setting: { ...defaultStrip, lower: 'polyethylene', lowerThickness: 4 },
  },
];

/** The preset that a setting is, if it is one. */
export function presetOf(setting: StripSetting): Preset | undefined {
  const text = JSON.stringify(ordered(setting));
  return presets.find((preset) => JSON.stringify(ordered(preset.setting)) === text);
}

/** The fields in one order, so that equal settings are equal texts. */
function ordered(setting: StripSetting): readonly unknown[] {
  const keys = Object.keys(defaultStrip) as (keyof StripSetting)[];
  return keys.map((key) => setting[key]);
}
