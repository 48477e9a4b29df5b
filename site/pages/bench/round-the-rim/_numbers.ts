import { presets } from '../../../../sims/benches/round-the-rim/presets.ts';
import type { RimShape } from '../../../../sims/benches/round-the-rim/setting.ts';
import { soundShape } from '../../../../sims/benches/round-the-rim/sound-shape.ts';
import { directionMap, faceArea } from '../../../../sims/geometry/index.ts';

type PresetName = (typeof presets)[number]['id'];

function shapeOf(id: PresetName): RimShape {
  const preset = presets.find((each) => each.id === id);
  if (preset === undefined) throw new Error(`Round the Rim has no preset “${id}”`);
  return preset.shape;
}

/** Peak ratio of a preset in a direction (degrees), some of its numbers changed. */
export function ratioOf(id: PresetName, bearing: number, change: Partial<RimShape> = {}): number {
  const { face, ballRadius } = soundShape({ ...shapeOf(id), ...change });
  const directions = [(bearing * Math.PI) / 180];
  const [row] = directionMap(face, ballRadius, { directions, translations: 60 });
  if (row === undefined) throw new Error('no direction was mapped');
  return row.peakStabilityRatio;
}

export const boneArea = faceArea(soundShape(shapeOf('bone')).face);
export const boneRadiusAP = shapeOf('bone').radiusAP;
