import {
  choiceField,
  numberField,
  readUrlState,
  switchField,
  writeUrlState,
  type ReadState,
  type UrlFields,
} from '../../shared/url-state.ts';
import type { Range } from '../../shared/range.ts';
import {
  cupFrom,
  cupRanges,
  defaultCup,
  type Cup,
  type CupSetting,
} from '../shared/cup-setting.ts';

/** Everything a visitor can set on the Path Tracer. */
export interface TracerSetting extends CupSetting {
  /** Coulomb coefficient. */
  readonly friction: number;
  /** Where the ball's centre stands from the centre line, mm; to the left it is negative. */
  readonly position: number;
  /** A setting kept to compare with. */
  readonly kept: CupSetting | null;
}

export const frictionRange: Range = { min: 0, max: 0.3, step: 0.01, digits: 2, unit: '' };

export const defaultTracer: TracerSetting = {
  ...defaultCup,
  friction: 0,
  position: 5,
  kept: null,
};

/** The translations a cup has room for; a step of 0.05 mm meets the middle and both rims of every width. */
export function positionRange(width: number): Range {
  return { min: -width / 2, max: width / 2, step: 0.05, digits: 2, unit: 'mm' };
}

/** A setting and the cup it makes, as they are drawn. */
export interface Drawn {
  readonly setting: CupSetting;
  readonly cup: Cup;
}

export function drawn(setting: CupSetting): Drawn {
  return { setting, cup: cupFrom(setting) };
}

interface FlatSetting extends CupSetting {
  readonly friction: number;
  readonly position: number;
  readonly isKept: boolean;
  readonly keptBall: number;
  readonly keptWidth: number;
  readonly keptShapeBy: CupSetting['shapeBy'];
  readonly keptDepth: number;
  readonly keptRadius: number;
  readonly keptMismatch: number;
}

const shapes = ['depth', 'radius', 'mismatch'] as const;
const cup = cupRanges;
const usual = defaultCup;
const fields: UrlFields<FlatSetting> = {
  ballDiameter: numberField('ball', 'ball diameter', cup.ballDiameter, usual.ballDiameter),
  width: numberField('width', 'socket width', cup.width, usual.width),
  shapeBy: choiceField('shape', 'shape by', shapes, usual.shapeBy),
  depth: numberField('depth', 'depth', cup.depth, usual.depth),
  radius: numberField('radius', 'radius of curvature', cup.radius, usual.radius),
  mismatch: numberField('mismatch', 'diametral mismatch', cup.mismatch, usual.mismatch),
  friction: numberField('friction', 'friction', frictionRange, defaultTracer.friction),
  position: numberField('at', 'translation', positionRange(cup.width.max), defaultTracer.position),
  isKept: switchField('kept', 'kept curve', false),
  keptBall: numberField('kept-ball', 'kept ball', cup.ballDiameter, usual.ballDiameter),
  keptWidth: numberField('kept-width', 'kept width', cup.width, usual.width),
  keptShapeBy: choiceField('kept-shape', 'kept shape by', shapes, usual.shapeBy),
  keptDepth: numberField('kept-depth', 'kept depth', cup.depth, usual.depth),
  keptRadius: numberField('kept-radius', 'kept radius', cup.radius, usual.radius),
  keptMismatch: numberField('kept-mismatch', 'kept mismatch', cup.mismatch, usual.mismatch),
};

/** Reads the bench's whole setting from a link. */
export function readTracerLink(query: string): ReadState<TracerSetting> {
  const { state, problem } = readUrlState(fields, query);
  const { ballDiameter, width, shapeBy, depth, radius, mismatch, friction, position } = state;
  const kept = state.isKept
    ? {
        ballDiameter: state.keptBall,
        width: state.keptWidth,
        shapeBy: state.keptShapeBy,
        depth: state.keptDepth,
        radius: state.keptRadius,
        mismatch: state.keptMismatch,
      }
    : null;
  return {
    state: { ballDiameter, width, shapeBy, depth, radius, mismatch, friction, position, kept },
    problem,
  };
}

/** The bench's whole setting as a link's query; of the three ways to say a shape only the knob's is written. */
export function writeTracerLink(setting: TracerSetting): string {
  const { kept, friction, position } = setting;
  const own = knobOnly(setting);
  const other = knobOnly(kept ?? usual);
  return writeUrlState(fields, {
    ...own,
    friction,
    position,
    isKept: kept !== null,
    keptBall: other.ballDiameter,
    keptWidth: other.width,
    keptShapeBy: other.shapeBy,
    keptDepth: other.depth,
    keptRadius: other.radius,
    keptMismatch: other.mismatch,
  });
}

function knobOnly(setting: CupSetting): CupSetting {
  const { ballDiameter, width, shapeBy } = setting;
  return { ...usual, ballDiameter, width, shapeBy, [shapeBy]: setting[shapeBy] };
}
