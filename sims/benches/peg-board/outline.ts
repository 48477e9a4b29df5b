import { BODY } from '../../figures/section.ts';
import type { Point } from '../../figures/view.ts';
import {
  checkedOutline,
  halfChord,
  outlineCurve,
  type Outline,
  type OutlineCurve,
} from '../../geometry/outline.ts';
import type { Ground } from './settings.ts';

const LINE_POINTS = 96;
const DEGREE = Math.PI / 180;

/** The back seen from the side of the patient: a pear. */
export function outlineOf({ width, height }: Pick<Ground, 'width' | 'height'>): Outline {
  return { kind: 'pear', width, height };
}

export function curveOf(ground: Pick<Ground, 'width' | 'height'>): OutlineCurve {
  return outlineCurve(checkedOutline(outlineOf(ground)));
}

export function isInside(curve: OutlineCurve, { x, y }: Point): boolean {
  return Math.abs(x) <= halfChord(curve, y) && Math.abs(y) < curve.halfHeight;
}

/** The outline as a closed run of places, mm. */
export function outlineLine({
  breadth,
  halfHeight,
  skew,
  fullness,
}: OutlineCurve): readonly Point[] {
  return Array.from({ length: LINE_POINTS }, (_, i) => {
    const turn = (2 * Math.PI * i) / LINE_POINTS;
    const eta = Math.sin(turn);
    const x = breadth * Math.cos(turn) * (1 - skew * eta + fullness * eta * eta);
    return { x, y: halfHeight * eta };
  });
}

/** From the middle to the edge of the back at a bearing in degrees, mm: by halving, as the pear is convex. */
export function reachOfBack(curve: OutlineCurve, bearing: number): number {
  const [along, up] = [Math.cos(bearing * DEGREE), Math.sin(bearing * DEGREE)];
  let inside = 0;
  let outside = 2 * Math.max(curve.halfHeight, curve.breadth);
  for (let i = 0; i < 40; i++) {
    const half = (inside + outside) / 2;
    if (isInside(curve, { x: half * along, y: half * up })) inside = half;
    else outside = half;
  }
  return inside;
}

/** From the middle to the rim of the face, which lies a ledge inside the back’s edge, mm. */
export function reachOfFace(curve: OutlineCurve, bearing: number): number {
  return reachOfBack(curve, bearing) - BODY.rimLedge;
}

/** A place on the face as a bearing in whole degrees and a share of the way to its rim in per cent. */
export function polarPlace(
  curve: OutlineCurve,
  { x, y }: Point,
  before: number,
): { readonly bearing: number; readonly share: number } {
  const away = Math.hypot(x, y);
  // In the middle there is no direction to read.
  if (away < 0.5) return { bearing: before, share: 0 };
  const bearing = (Math.round(Math.atan2(y, x) / DEGREE) + 360) % 360;
  const share = Math.min(100, Math.round((100 * away) / reachOfFace(curve, bearing)));
  return { bearing, share };
}
