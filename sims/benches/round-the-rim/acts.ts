import { directionMap } from '../../geometry/index.ts';
import { directionOf } from './bearing.ts';
import { presets, type Preset } from './presets.ts';
import type { RimShape } from './setting.ts';
import { soundShape, type SoundShape } from './sound-shape.ts';
import { LOOKS } from './way.ts';

/** One face of a demonstration: what it is called, its shape, and what it holds forward and upward. */
export interface RimAct {
  readonly text: string;
  readonly shape: RimShape;
  /** Peak ratios. */
  readonly forward: number;
  readonly up: number;
}

const FORWARD = directionOf(0);
const UP = directionOf(90);

/** Peak ratios of a face forward and upward. */
export function mainRatios({
  face,
  ballRadius,
}: SoundShape): readonly [forward: number, up: number] {
  const [forward, up] = directionMap(face, ballRadius, {
    directions: [FORWARD, UP],
    translations: LOOKS,
  });
  if (forward === undefined || up === undefined) throw new RangeError('no direction was mapped');
  return [forward.peakStabilityRatio, up.peakStabilityRatio];
}

/**
 * An act with its ratios computed.
 *
 * @param from the face it starts from
 * @param change what it sets differently
 */
export function rimAct(text: string, from: Preset['id'], change: Partial<RimShape> = {}): RimAct {
  const preset = presets.find(({ id }) => id === from);
  if (preset === undefined) throw new RangeError(`from is ${from}; allowed: a preset's id`);
  const sound = soundShape({ ...preset.shape, ...change });
  const [forward, up] = mainRatios(sound);
  return { text, shape: sound.shape, forward, up };
}
