import { sphericalSocket, type SphericalSocket } from '../../geometry/index.ts';
import { nearestAllowed, type Range } from '../../shared/range.ts';
import { limitsOf, mismatchLimits, widthHolding, type Limits } from './pair-limits.ts';
import {
  defaultPair,
  pairRanges,
  type Change,
  type Held,
  type PairField,
  type PairSetting,
} from './pair-ranges.ts';
import { outOfReach, refusal } from './pair-words.ts';

/** A setting made real. */
export interface Pair {
  /** The setting with every number that counts at an allowed value. */
  readonly setting: PairSetting;
  readonly socket: SphericalSocket;
  readonly ballRadius: number;
  /** Radial, mm. */
  readonly mismatch: number;
  /** What a socket can be said to hold: mm, mm, degrees. */
  readonly shape: Readonly<Record<Held, number>>;
  /** Why something is not as it was asked for; '' where all is. */
  readonly message: string;
}

const DEGREES = 180 / Math.PI;
/** A value carried over from another control may miss a limit by rounding; so little is set right without a word. */
const SLACK = 1e-3;
const STEP_SLACK = 1e-6;

/**
 * The ball and socket a setting stands for.
 *
 * @param asked any numbers: what is none, or lies where the rest has no room for it, is brought to the nearest allowed
 */
export function pairFrom(asked: PairSetting): Pair {
  const staying: PairField = asked.change === 'socket' ? 'ballDiameter' : 'radius';
  // What stays is taken as it is; the rest has to find room.
  const stays = broughtIn(asked, staying, pairRanges[staying]);
  const parted = broughtIn(stays, 'mismatch', mismatchLimits(stays));
  const setting = broughtIn(parted, asked.held, limitsOf(parted, asked.held));
  const message = [staying, 'mismatch' as const, asked.held]
    .filter((field) => !(Math.abs(setting[field] - asked[field]) <= SLACK))
    .map((field) => refusal(setting, field, asked[field]))
    .join(' ');
  return { ...pairAt(setting, setting.mismatch), message };
}

/** A sound setting with another mismatch (mm), within {@link mismatchLimits}. */
export function pairAt(setting: PairSetting, mismatch: number): Pair {
  const { change, held } = setting;
  const curvatureRadius =
    change === 'socket' ? setting.ballDiameter / 2 + mismatch : setting.radius;
  const ballRadius = change === 'socket' ? setting.ballDiameter / 2 : setting.radius - mismatch;
  const width = widthHolding(held, setting[held], curvatureRadius);
  const socket = sphericalSocket({ curvatureRadius, width });
  return {
    setting,
    socket,
    ballRadius,
    mismatch,
    shape: { width, depth: socket.depth, arc: 2 * socket.halfArc * DEGREES, [held]: setting[held] },
    message: '',
  };
}

/** The values one control may take while the others stay as they are; the ends lie on its steps. */
export function allowedRange(setting: PairSetting, field: PairField): Range {
  return stepsWithin(pairRanges[field], limitsOf(setting, field));
}

/**
 * Holds another of width, depth and arc, without changing the socket: its value is carried over as it is, off the steps
 * where need be, until its control is turned.
 *
 * @returns the setting, and a sentence where the new control cannot say the present value ('' where it can)
 */
export function holdInstead(
  setting: PairSetting,
  held: Held,
): { readonly setting: PairSetting; readonly message: string } {
  const now = pairFrom(setting);
  const present = now.shape[held];
  const next = { ...now.setting, held, [held]: present };
  const value = clamp(present, limitsOf(next, held));
  return {
    setting: { ...next, [held]: value },
    message: Math.abs(present - value) > SLACK ? outOfReach(held, present, value) : '',
  };
}

/** Lets the other of the two curves change, from the pair as it stands. */
export function changeInstead(setting: PairSetting, change: Change): PairSetting {
  const { socket, ballRadius, setting: sound } = pairFrom(setting);
  const radius = socket.curvatureRadius;
  return { ...sound, change, radius, ballDiameter: 2 * ballRadius };
}

function broughtIn(setting: PairSetting, field: PairField, limits: Limits): PairSetting {
  const asked = Number.isFinite(setting[field]) ? setting[field] : defaultPair[field];
  const isAllowed = asked >= limits.min - SLACK && asked <= limits.max + SLACK;
  const value = isAllowed
    ? clamp(asked, limits)
    : nearestAllowed(asked, stepsWithin(pairRanges[field], limits));
  return { ...setting, [field]: value };
}

function clamp(value: number, { min, max }: Limits): number {
  return Math.max(min, Math.min(max, value));
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
