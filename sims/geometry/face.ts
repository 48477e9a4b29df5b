import { angleFromDefect } from './defect.ts';
import {
  checkedShape,
  heightAt,
  remainingRadius,
  slopeAt,
  type FaceInput,
  type FaceShape,
} from './face-shape.ts';
import { LENGTH_TOLERANCE } from './numeric.ts';
import { halfChord, outlineArea } from './outline.ts';
import { areaInside, sampleRim, type RimSamples } from './rim-samples.ts';

/** The face of a socket in three dimensions. Make one with {@link face}. */
export interface Face extends FaceShape {
  /** Area of what is left, seen en face, mm². */
  readonly area: number;
  /** The rim in places close to each other: what the contact search looks at. Not to be written to. */
  readonly rim: RimSamples;
}

/** A place on the rim: x anterior, y superior, z lateral of the deepest point, mm. */
export interface RimPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * The face of a socket: an articular surface inside an outline, with a labral lip and a rim defect if wanted.
 *
 * Frame: origin at the deepest point, which lies in the middle of width and height; x anterior, y superior, z lateral. A
 * direction is an angle from anterior toward superior. The surface is the two-radius surface
 * z = q / (1 + √(1 − s)), q = x²/Rx + y²/Ry, s = x²/Rx² + y²/Ry² with Rx the AP and Ry the SI radius: its two principal
 * sections are exact circles, and equal radii make it the exact sphere. Outline, lip and defect: see {@link Outline},
 * {@link Labrum} and {@link Defect}.
 *
 * @param input.outline mm; width at most twice the AP radius, height at most twice the SI radius
 * @param input.curvatureRadiusAP mm, finite
 * @param input.curvatureRadiusSI mm, finite
 * @param input.labrum height and width in mm, the width at most the shortest way from middle to rim
 * @param input.defect direction in rad, depth in mm from 0 (none) to below the middle of the face
 * @returns plain data, to be treated as constant
 * @throws RangeError naming the field, its value and what is allowed
 */
export function face(input: FaceInput): Face {
  const shape = checkedShape(input);
  const rim = sampleRim(shape);
  return {
    ...shape,
    area: shape.defect === undefined ? outlineArea(shape.curve) : areaInside(shape, rim),
    rim,
  };
}

/**
 * Area of the face seen en face, that is projected on the plane square to the centre line, mm²; without what a defect
 * has taken. The curved surface is larger.
 */
export function faceArea(onFace: Face): number {
  return onFace.area;
}

/** Whether a place, seen en face, is on the face: inside the outline and not lost to a defect. */
export function isOnFace(onFace: Face, x: number, y: number): boolean {
  const { curve, defect, cutAt } = onFace;
  const slack = curve.halfHeight * LENGTH_TOLERANCE;
  if (!(Math.abs(y) <= curve.halfHeight + slack)) return false;
  // Near top and bottom the chord shrinks so fast that a place on the rim may lie above it by rounding.
  const inward = y - Math.sign(y) * slack;
  if (!(Math.abs(x) <= halfChord(curve, inward) + slack)) return false;
  if (defect === undefined) return true;
  const along = x * Math.cos(defect.direction) + y * Math.sin(defect.direction);
  if (defect.kind === 'cut') return along <= cutAt + slack;
  const angle = Math.atan2(y, x);
  // The steps at its ends are part of the rim.
  const isWorn = Math.abs(angleFromDefect(defect, angle)) < defect.span / 2 - LENGTH_TOLERANCE;
  return !isWorn || Math.hypot(x, y) <= remainingRadius(onFace, angle) + slack;
}

/**
 * Height of the articular surface over its deepest point, labral lip included, mm.
 *
 * @param x mm anterior of the middle
 * @param y mm superior of the middle
 * @throws RangeError for a place that is not on the face: see {@link isOnFace}
 */
export function surfaceHeight(onFace: Face, x: number, y: number): number {
  checkOnFace(onFace, x, y);
  return heightAt(onFace, x, y);
}

function checkOnFace(onFace: Face, x: number, y: number): void {
  if (!isOnFace(onFace, x, y)) {
    throw new RangeError(
      `(x, y) is (${x}, ${y}); allowed: places on the face, ${onFace.outline.width} mm wide and ${onFace.outline.height} mm high`,
    );
  }
}

/**
 * Slope of the articular surface, labral lip included: how much it rises for each mm anterior (x) and superior (y). The
 * normal of the surface, out of the socket, is (−x, −y, 1) over its length. On the inner edge of the lip it is the lip's.
 *
 * @throws RangeError for a place that is not on the face, as {@link surfaceHeight}
 */
export function surfaceSlope(
  onFace: Face,
  x: number,
  y: number,
): { readonly x: number; readonly y: number } {
  checkOnFace(onFace, x, y);
  return slopeAt(onFace, x, y);
}

/**
 * Where the rim lies in a direction: the edge of a defect where one is.
 *
 * @param angle rad from anterior toward superior
 * @throws RangeError for an angle that is not finite
 */
export function rimPoint(onFace: Face, angle: number): RimPoint {
  if (!Number.isFinite(angle)) {
    throw new RangeError(`angle is ${String(angle)}; allowed: any finite angle, rad`);
  }
  const radius = remainingRadius(onFace, angle);
  const x = radius * Math.cos(angle);
  const y = radius * Math.sin(angle);
  return { x, y, z: heightAt(onFace, x, y) };
}

/** The rim that is left, once round against the clock from its first piece: for drawing. Corners are among the places. */
export function rimLine(onFace: Face): readonly RimPoint[] {
  const { x, y, z, pieces } = onFace.rim;
  return pieces.flatMap(({ first, last }) =>
    Array.from({ length: last - first }, (_, i) => ({
      x: x[first + i] ?? 0,
      y: y[first + i] ?? 0,
      z: z[first + i] ?? 0,
    })),
  );
}
