import type { Range } from '../../shared/range.ts';

/** Which of the three ways to say how hollow the cup is stands as the knob; the other two follow from it. */
export type ShapeBy = 'depth' | 'radius' | 'mismatch';

/** A ball and a cup as the controls hold them, mm. Of depth, radius and mismatch only the one `shapeBy` names counts. */
export interface CupSetting {
  readonly ballDiameter: number;
  /** Rim to rim, in the plane drawn. */
  readonly width: number;
  readonly shapeBy: ShapeBy;
  readonly depth: number;
  /** The socket's radius of curvature. */
  readonly radius: number;
  /** Diametral mismatch, 2(R − r). */
  readonly mismatch: number;
}

export type CupField = Exclude<keyof CupSetting, 'shapeBy'>;

export const shapeNames: Readonly<Record<ShapeBy, string>> = {
  depth: 'depth',
  radius: 'radius of curvature',
  mismatch: 'diametral mismatch',
};

export const cupRanges: Readonly<Record<CupField, Range>> = {
  ballDiameter: { min: 30, max: 60, step: 0.5, digits: 1, unit: 'mm' },
  width: { min: 12, max: 46, step: 0.5, digits: 1, unit: 'mm' },
  depth: { min: 0, max: 14, step: 0.1, digits: 1, unit: 'mm' },
  radius: { min: 15, max: 80, step: 0.5, digits: 1, unit: 'mm' },
  mismatch: { min: 0, max: 40, step: 0.5, digits: 1, unit: 'mm' },
};

/** Near the anatomy: a head of 24 mm radius on a bony hollow 4 mm deep. */
export const defaultCup: CupSetting = {
  ballDiameter: 48,
  width: 28,
  shapeBy: 'depth',
  depth: 4,
  radius: 26.5,
  mismatch: 5,
};
