import type { DefectKind, OutlineKind } from '../../geometry/index.ts';
import type { Range } from '../../shared/range.ts';

/** How bone is missing at the rim, or that none is. */
export type DefectChoice = 'none' | DefectKind;

/** Face and ball as the controls hold them, mm. */
export interface RimShape {
  readonly outline: OutlineKind;
  /** Bottom to top; a circle has its width instead. */
  readonly height: number;
  /** Widest from front to back; the diameter of a circle. */
  readonly width: number;
  /** Of a pear, halfway between its middle and its top. */
  readonly upperWidth: number;
  /** One radius of curvature both ways: `radiusSI`; `radiusAP` does not count then. */
  readonly sameRadius: boolean;
  readonly radiusAP: number;
  readonly radiusSI: number;
  readonly lip: boolean;
  /** How much the lip rises at the outline. */
  readonly lipHeight: number;
  readonly lipWidth: number;
  readonly defect: DefectChoice;
  /** Where the rim is defective, hours on a clock face; 12 superior, 3 anterior. */
  readonly clock: number;
  readonly defectDepth: number;
  readonly ballDiameter: number;
}

/** Everything a visitor can set on Round the Rim. */
export interface RimSetting extends RimShape {
  /** Chosen direction, whole degrees from anterior toward superior. */
  readonly bearing: number;
  /** Where the ball's centre stands, mm from the middle; negative on the opposite side. */
  readonly translation: number;
  readonly showsPublished: boolean;
}

/** The fields of a shape that are numbers on a slider. */
export type RimField = {
  [Name in keyof RimShape]: RimShape[Name] extends number ? Name : never;
}[keyof RimShape];

const length = (min: number, max: number): Range => ({
  min,
  max,
  step: 0.1,
  digits: 1,
  unit: 'mm',
});

export const rimRanges: Readonly<Record<RimField, Range>> = {
  height: length(20, 48),
  width: length(14, 44),
  upperWidth: length(8, 42),
  radiusAP: length(16, 80),
  radiusSI: length(16, 80),
  lipHeight: length(0.2, 5),
  lipWidth: length(1, 8),
  clock: { min: 1, max: 12.5, step: 0.5, digits: 1, unit: 'h' },
  defectDepth: length(0.5, 20),
  ballDiameter: length(30, 60),
};

export const bearingRange: Range = { min: 0, max: 359, step: 1, digits: 0, unit: '°' };

/** No face is wider: what a link may hold as a translation, mm. */
export const FARTHEST = 30;

export const fieldNames: Readonly<Record<RimField, string>> = {
  height: 'height',
  width: 'width',
  upperWidth: 'upper width',
  radiusAP: 'radius front to back',
  radiusSI: 'radius top to bottom',
  lipHeight: 'lip height',
  lipWidth: 'lip width',
  clock: 'place of the defect',
  defectDepth: 'depth of the defect',
  ballDiameter: 'ball diameter',
};
