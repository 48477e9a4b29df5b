import { directionMap } from '../../geometry/index.ts';
import { directionOf } from './bearing.ts';
import { presets, type Preset } from './presets.ts';
import type { RimShape } from './setting.ts';
import { soundShape } from './sound-shape.ts';
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

/**
 * An act with its ratios computed.
 *
 * @param from the face it starts from
 * @param change what it sets differently
 */
export function rimAct(text: string, from: Preset['id'], change: Partial<RimShape> = {}): RimAct {
  const preset = presets.find(({ id }) => id === from);
  if (preset === undefined) throw new RangeError(`from is ${from}; allowed: a preset's id`);
  const { shape, face, ballRadius } = soundShape({ ...preset.shape, ...change });
  const [forward, up] = directionMap(face, ballRadius, {
    directions: [FORWARD, UP],
    translations: LOOKS,
  });
  if (forward === undefined || up === undefined) throw new RangeError('no direction was mapped');
  return { text, shape, forward: forward.peakStabilityRatio, up: up.peakStabilityRatio };
}
