import { face, type Face, type FaceInput, type Outline } from '../../geometry/index.ts';
import { mm } from '../../shared/format.ts';
import { nearestAllowed, type Range } from '../../shared/range.ts';
import { clockText, directionOfClock } from './bearing.ts';
import {
  chordLimit,
  defectDepthLimit,
  leastRadius,
  leastRadiusAP,
  leastRadiusSI,
  lipWidthLimit,
  outlineOnly,
  upperWidthLimits,
  within,
} from './limits.ts';
import { defaultShape } from './presets.ts';
import { fieldNames, rimRanges, type RimField, type RimShape } from './setting.ts';

/** A shape that can be had: what was asked for, or the nearest to it. */
export interface SoundShape {
  readonly shape: RimShape;
  readonly input: FaceInput;
  readonly face: Face;
  /** The same face with its rim whole, and that without its lip as well. */
  readonly whole: Face;
  readonly bare: Face;
  readonly ballRadius: number;
  /** What each control may be set to while the others stay. */
  readonly ranges: Readonly<Record<RimField, Range>>;
  /** What was not taken as asked, and where it stands instead; '' where all was. */
  readonly message: string;
}

/**
 * Makes a shape that can be had of any shape at all: outline first, then radii, lip and defect, each brought to the
 * nearest value that those before it allow.
 */
export function soundShape(asked: RimShape): SoundShape {
  const notes: string[] = [];
  /** What does not count now is kept for when it does. */
  const keep = (field: RimField): number =>
    Number.isFinite(asked[field]) ? asked[field] : defaultShape[field];
  const take = (field: RimField, range: Range, why: string): number => {
    const own = rimRanges[field];
    const wanted = keep(field);
    const value = nearestAllowed(wanted, range);
    if (wanted < range.min - SLACK || wanted > range.max + SLACK) {
      const isOwn = wanted < own.min || wanted > own.max;
      const reason = isOwn ? `This control goes from ${own.min} to ${own.max}.` : why;
      notes.push(`${reason} The ${fieldNames[field]} is set to ${amount(field, value)}.`);
    }
    return value;
  };

  const isCircle = asked.outline === 'circle';
  const width = take('width', rimRanges.width, '');
  const height = isCircle ? width : take('height', rimRanges.height, '');
  const upperRange = within('upperWidth', upperWidthLimits(width));
  const isPear = asked.outline === 'pear';
  const upperWidth = isPear
    ? take('upperWidth', upperRange, `No pear ${mm(width)} wide has so extreme an upper width.`)
    : keep('upperWidth');
  const outline: Outline = {
    kind: asked.outline,
    width,
    height,
    upperWidth: isPear ? upperWidth : undefined,
  };
  const flat = outlineOnly(outline);

  const upright = 'On so tight a curve the rim would stand nearly upright.';
  const rangeSI = within('radiusSI', {
    min: asked.sameRadius ? leastRadius(flat) : leastRadiusSI(flat),
  });
  const radiusSI = take('radiusSI', rangeSI, upright);
  const rangeAP = within('radiusAP', { min: leastRadiusAP(flat, radiusSI) });
  const radiusAP = asked.sameRadius ? radiusSI : take('radiusAP', rangeAP, upright);

  const lipRange = within('lipWidth', { max: lipWidthLimit(flat) });
  const noHollow = 'So wide a lip would leave no hollow.';
  const lipHeight = asked.lip ? take('lipHeight', rimRanges.lipHeight, '') : keep('lipHeight');
  const lipWidth = asked.lip ? take('lipWidth', lipRange, noHollow) : keep('lipWidth');

  const kind = asked.defect === 'none' ? 'cut' : asked.defect;
  const clock = take('clock', rimRanges.clock, '');
  const depthRange = within('defectDepth', { max: defectDepthLimit(flat, kind, clock) });
  const tooDeep = `A defect so deep at ${clockText(clock)} would reach the middle of the face.`;
  const defectDepth =
    asked.defect === 'none' ? keep('defectDepth') : take('defectDepth', depthRange, tooDeep);
  const ballDiameter = take('ballDiameter', rimRanges.ballDiameter, '');

  const radii = { curvatureRadiusAP: radiusAP, curvatureRadiusSI: radiusSI };
  const input: FaceInput = {
    outline,
    ...radii,
    labrum: asked.lip ? { height: lipHeight, width: lipWidth } : undefined,
    defect:
      asked.defect === 'none'
        ? undefined
        : { direction: directionOfClock(clock), depth: defectDepth, kind },
  };
  const full = face(input);
  const whole = full.defect === undefined ? full : face({ ...input, defect: undefined });
  return {
    shape: {
      ...asked,
      height: isCircle ? keep('height') : height,
      width,
      upperWidth,
      radiusSI,
      radiusAP: asked.sameRadius ? keep('radiusAP') : radiusAP,
      lipHeight,
      lipWidth,
      clock,
      defectDepth,
      ballDiameter,
    },
    input,
    face: full,
    whole,
    bare: asked.lip ? face({ outline, ...radii }) : whole,
    ballRadius: ballDiameter / 2,
    ranges: {
      ...rimRanges,
      width: within('width', { max: chordLimit(radiusAP) }),
      height: within('height', { max: chordLimit(radiusSI) }),
      upperWidth: upperRange,
      radiusSI: rangeSI,
      radiusAP: rangeAP,
      lipWidth: lipRange,
      defectDepth: depthRange,
    },
    message: notes.join(' '),
  };
}

/** Millimetres that count as rounding. */
const SLACK = 1e-6;

function amount(field: RimField, value: number): string {
  return field === 'clock' ? clockText(value) : mm(value, 1);
}
