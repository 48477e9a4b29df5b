import { cupRanges, type CupSetting } from './cup-ranges.ts';

export interface Limits {
  readonly min: number;
  readonly max: number;
}

/**
 * How deep, how curved and how loose a cup of the setting's width may be for its ball, mm.
 *
 * The curve may not be tighter than the ball (R ≥ r), nor wider than its own diameter (R ≥ w/2), nor deeper than the
 * depth control goes; by the intersecting chords a depth d and a width w have R = (w²/4 + d²) / 2d.
 */
export function shapeLimits({ ballDiameter, width }: CupSetting): {
  readonly depth: Limits;
  readonly radius: Limits;
  readonly mismatch: Limits;
} {
  const { depth, radius, mismatch } = cupRanges;
  const least = Math.max(ballDiameter / 2, tightestRadius(width));
  return {
    depth: { min: depth.min, max: Math.min(depth.max, sagitta(least, width)) },
    radius: { min: least, max: radius.max },
    mismatch: { min: 2 * least - ballDiameter, max: mismatch.max },
  };
}

/**
 * How large the ball, and how wide the cup, may be while the shape control keeps its `value`, mm.
 *
 * The conditions of {@link shapeLimits}, solved for the ball and for the width.
 */
export function sizeLimits(
  { ballDiameter, width, shapeBy }: CupSetting,
  value: number,
): { readonly ballDiameter: Limits; readonly width: Limits } {
  const deepest = cupRanges.depth.max;
  const chord = (radius: number, depth: number): number =>
    2 * Math.sqrt(Math.max(0, depth * (2 * radius - depth)));
  switch (shapeBy) {
    case 'depth':
      return {
        ballDiameter: within('ballDiameter', {
          max: value > 0 ? diameter(width, value) : Infinity,
        }),
        width: within('width', { min: Math.max(2 * value, chord(ballDiameter / 2, value)) }),
      };
    case 'radius':
      return {
        ballDiameter: within('ballDiameter', { max: 2 * value }),
        width: within('width', { max: chord(value, deepest) }),
      };
    case 'mismatch':
      return {
        ballDiameter: within('ballDiameter', { min: 2 * tightestRadius(width) - value }),
        width: within('width', { max: chord((ballDiameter + value) / 2, deepest) }),
      };
  }
}

/** Smallest radius of curvature a width can have at all: half the width, or more where that were too deep, mm. */
export function tightestRadius(width: number): number {
  const deepest = cupRanges.depth.max;
  return width / 2 > deepest ? diameter(width, deepest) / 2 : width / 2;
}

function within(field: 'ballDiameter' | 'width', limits: Partial<Limits>): Limits {
  const { min, max } = cupRanges[field];
  return { min: Math.max(min, limits.min ?? min), max: Math.min(max, limits.max ?? max) };
}

/** Diameter of the circle in which a chord of `width` stands `depth` high. */
function diameter(width: number, depth: number): number {
  return ((width / 2) ** 2 + depth ** 2) / depth;
}

/** Height of an arc of a radius over a chord, mm. */
function sagitta(radius: number, chord: number): number {
  const half = chord / 2;
  return half ** 2 / (radius + Math.sqrt(Math.max(0, radius ** 2 - half ** 2)));
}
