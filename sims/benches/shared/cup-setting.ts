import { socketFromDepth, sphericalSocket, type SphericalSocket } from '../../geometry/index.ts';
import { nearestAllowed, type Range } from '../../shared/range.ts';
import { shapeLimits, sizeLimits, type Limits } from './cup-limits.ts';
import {
  cupRanges,
  defaultCup,
  type CupField,
  type CupSetting,
  type ShapeBy,
} from './cup-ranges.ts';
import { outOfReach, refusal } from './cup-words.ts';

export { cupRanges, defaultCup, shapeNames } from './cup-ranges.ts';
export type { CupField, CupSetting, ShapeBy } from './cup-ranges.ts';

/** A setting made real. */
export interface Cup {
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
  /** The three ways to say the shape, mm; radius and mismatch are Infinity for a flat socket. */
  readonly shape: Readonly<Record<ShapeBy, number>>;
  /** Why the shape is not the one asked for; '' where it is. */
  readonly message: string;
}

/** A carried-over shape may miss a limit by rounding; so little (mm) is set right without a word. */
const SLACK = 1e-3;
const STEP_SLACK = 1e-6;

/**
 * The socket and ball a setting stands for. Ball and width are taken as given; a shape they do not allow becomes the
 * nearest one on the control's steps that they do.
 *
 * @param setting any numbers: what lies outside its range, or is none, is brought to the nearest allowed or the default
 */
export function cupFrom(setting: CupSetting): Cup {
  const sound = withSoundSizes(setting);
  const { shapeBy, width } = sound;
  const limits = shapeLimits(sound)[shapeBy];
  const asked = finiteOr(setting[shapeBy], defaultCup[shapeBy]);
  const isAllowed = asked >= limits.min - SLACK && asked <= limits.max + SLACK;
  const value = isAllowed
    ? clamp(asked, limits)
    : nearestAllowed(asked, stepsWithin(cupRanges[shapeBy], limits));
  const ballRadius = sound.ballDiameter / 2;
  const socket =
    shapeBy === 'depth'
      ? socketFromDepth({ depth: value, width })
      : sphericalSocket({
          curvatureRadius: shapeBy === 'radius' ? value : ballRadius + value / 2,
          width,
        });
  const { curvatureRadius: radius, depth } = socket;
  return {
    socket,
    ballRadius,
    shape: { depth, radius, mismatch: 2 * (radius - ballRadius), [shapeBy]: value },
    message: isAllowed ? '' : refusal({ ...sound, [shapeBy]: value }, asked),
  };
}

/** The values one control may take while the others stay as they are; the ends lie on its steps. */
export function allowedRange(setting: CupSetting, field: CupField): Range {
  const sound = withSoundSizes(setting);
  const limits =
    field === 'ballDiameter' || field === 'width'
      ? sizeLimits(sound, cupFrom(sound).shape[sound.shapeBy])[field]
      : shapeLimits(sound)[field];
  return stepsWithin(cupRanges[field], limits);
}

/**
 * Makes another of the three the knob without changing the shape: its value is carried over as it is, off the steps
 * where need be, until the knob is turned.
 *
 * @returns the new setting, and a sentence where the new control cannot say the present shape ('' where it can)
 */
export function switchShapeBy(
  setting: CupSetting,
  to: ShapeBy,
): { readonly setting: CupSetting; readonly message: string } {
  const sound = withSoundSizes(setting);
  const present = cupFrom(sound).shape[to];
  const limits = shapeLimits(sound)[to];
  const value = clamp(present, limits);
  return {
    setting: { ...sound, shapeBy: to, [to]: value },
    message: present > limits.max + SLACK ? outOfReach(to, present, value) : '',
  };
}

function withSoundSizes(setting: CupSetting): CupSetting {
  const sound = (field: 'ballDiameter' | 'width'): number =>
    clamp(finiteOr(setting[field], defaultCup[field]), cupRanges[field]);
  return { ...setting, ballDiameter: sound('ballDiameter'), width: sound('width') };
}

function clamp(value: number, { min, max }: Limits): number {
  return Math.max(min, Math.min(max, value));
}

function finiteOr(value: number, fallback: number): number {
  return Number.isFinite(value) ? value : fallback;
}

/** The part of a control's range inside some limits, its ends moved inward to whole steps. */
function stepsWithin(range: Range, { min, max }: Limits): Range {
  const stepAt = (value: number, whole: (steps: number) => number): number =>
    Number((range.min + whole((value - range.min) / range.step) * range.step).toFixed(6));
  return {
    ...range,
    min: stepAt(min, (steps) => Math.ceil(steps - STEP_SLACK)),
    max: stepAt(max, (steps) => Math.floor(steps + STEP_SLACK)),
  };
}
