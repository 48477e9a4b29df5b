import {
  angleFromDefect,
  checkedDefect,
  cutDistance,
  type Defect,
  type KnownDefect,
} from './defect.ts';
import { checkedLabrum, labrumRise, type Labrum } from './labrum.ts';
import { LENGTH_TOLERANCE, positive } from './numeric.ts';
import {
  checkedOutline,
  outlineCurve,
  type KnownOutline,
  type Outline,
  type OutlineCurve,
} from './outline.ts';
import { POLAR_STEPS, polarRadius, polarTable, type PolarTable } from './polar-table.ts';
import { differentiateSurface, surfaceZ, type SurfaceDerivatives } from './two-radius-surface.ts';

/** What makes a face. Lengths in mm; x anterior, y superior, z lateral; a direction is rad from anterior toward superior. */
export interface FaceInput {
  readonly outline: Outline;
  /** Radius of the section from front to back through the middle, mm. */
  readonly curvatureRadiusAP: number;
  /** Radius of the section from bottom to top through the middle, mm. */
  readonly curvatureRadiusSI: number;
  readonly labrum?: Labrum | undefined;
  readonly defect?: Defect | undefined;
}

/** A face whose numbers are checked and whose outline is solved. */
export interface FaceShape {
  readonly outline: KnownOutline;
  readonly curvatureRadiusAP: number;
  readonly curvatureRadiusSI: number;
  readonly labrum: Labrum | undefined;
  readonly defect: KnownDefect | undefined;
  readonly curve: OutlineCurve;
  readonly polar: PolarTable;
  /** Distance of the edge of a cut from the middle, mm; Infinity where there is none. */
  readonly cutAt: number;
}

/** @throws RangeError as {@link face} */
export function checkedShape(input: FaceInput): FaceShape {
  const outline = checkedOutline(input.outline);
  const curve = outlineCurve(outline);
  const curvatureRadiusAP = positive('curvatureRadiusAP', input.curvatureRadiusAP, 'mm');
  const curvatureRadiusSI = positive('curvatureRadiusSI', input.curvatureRadiusSI, 'mm');
  const across = 'mm (twice the curvatureRadius';
  positive('outline.width', outline.width, `${across}AP)`, 2 * curvatureRadiusAP);
  positive('outline.height', outline.height, `${across}SI)`, 2 * curvatureRadiusSI);
  const polar = polarTable(curve);
  const extent = extentOf(polar, curvatureRadiusSI);
  if (!(curvatureRadiusAP >= extent.leastRadius * (1 - LENGTH_TOLERANCE))) {
    throw new RangeError(
      `curvatureRadiusAP is ${curvatureRadiusAP}; allowed: ${extent.leastRadius} to any larger finite value mm (the surface must reach the rim)`,
    );
  }
  const defect = input.defect === undefined ? undefined : checkedDefect(input.defect, curve);
  return {
    outline,
    curvatureRadiusAP,
    curvatureRadiusSI,
    labrum:
      input.labrum === undefined ? undefined : checkedLabrum(input.labrum, extent.shortestRadius),
    defect,
    curve,
    polar,
    cutAt: defect?.kind === 'cut' ? cutDistance(defect, curve) : Infinity,
  };
}

/** Shortest radius of the outline, and the AP radius that a surface needs to reach all of it, mm. */
function extentOf(
  { radius }: PolarTable,
  curvatureRadiusSI: number,
): { readonly shortestRadius: number; readonly leastRadius: number } {
  let leastRadius = 0;
  radius.forEach((distance, i) => {
    const angle = (2 * Math.PI * i) / POLAR_STEPS;
    const room = 1 - ((distance * Math.sin(angle)) / curvatureRadiusSI) ** 2;
    const across = Math.abs(distance * Math.cos(angle));
    if (room > 0) leastRadius = Math.max(leastRadius, across / Math.sqrt(room));
  });
  return { shortestRadius: radius.reduce((least, r) => Math.min(least, r)), leastRadius };
}

/** Height of the surface with its lip, mm, at a place inside the outline. */
export function heightAt(shape: FaceShape, x: number, y: number): number {
  const { curvatureRadiusAP, curvatureRadiusSI, labrum, curve } = shape;
  const z = surfaceZ(1 / curvatureRadiusAP, 1 / curvatureRadiusSI, x, y);
  if (labrum === undefined) return z;
  const { radius } = polarRadius(curve, Math.atan2(y, x));
  return z + labrumRise(labrum, radius, Math.hypot(x, y));
}

/** Slope of the surface with its lip there, along x and along y. */
export function slopeAt(
  shape: FaceShape,
  x: number,
  y: number,
): { readonly x: number; readonly y: number } {
  const { curvatureRadiusAP, curvatureRadiusSI, labrum, curve } = shape;
  const here: SurfaceDerivatives = { z: 0, zx: 0, zy: 0, zxx: 0, zxy: 0, zyy: 0 };
  differentiateSurface(here, 1 / curvatureRadiusAP, 1 / curvatureRadiusSI, x, y);
  const distance = Math.hypot(x, y);
  if (labrum === undefined || distance === 0) return { x: here.zx, y: here.zy };
  const { radius, slope } = polarRadius(curve, Math.atan2(y, x));
  if (radius - distance > labrum.width) return { x: here.zx, y: here.zy };
  const steep = labrum.height / labrum.width;
  // The lip rises away from the middle, and falls where the outline goes away.
  const across = -slope / distance;
  return {
    x: here.zx + (steep * (x - y * across)) / distance,
    y: here.zy + (steep * (y + x * across)) / distance,
  };
}

/** Distance from the middle to what is left of the rim, mm, in a direction. */
export function remainingRadius(shape: FaceShape, angle: number): number {
  const { radius } = polarRadius(shape.curve, angle);
  return withDefect(shape, angle, radius);
}

/** Distance to the rim that is left on a ray where the outline lies at `radius`. */
export function withDefect(shape: FaceShape, angle: number, radius: number): number {
  const { defect } = shape;
  if (defect === undefined) return radius;
  const off = angleFromDefect(defect, angle);
  if (defect.kind === 'segment') {
    return Math.abs(off) <= defect.span / 2 ? radius - defect.depth : radius;
  }
  const cosine = Math.cos(off);
  return cosine * radius > shape.cutAt ? shape.cutAt / cosine : radius;
}
