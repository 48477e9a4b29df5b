import type { Face } from '../geometry/index.ts';
import {
  highestOf,
  lookAlong,
  rangesAbove,
  type Looked,
  type Range,
} from './contact-pressure-ranges.ts';
import { firstTouch, pressedParts, type RayPart } from './contact-pressure-ray.ts';
import { GAUSS_NODES, GAUSS_WEIGHTS } from './contact-pressure-rings.ts';
import { rayAt, type BallOverFace, type Ray } from './contact-pressure-spot.ts';

/** Places at which the whole turn is looked at for the height of first touch. */
const LOOKS = 72;

/** Panels of Gauss's rule in a pressed range of directions, each of three rays: to add up, and to draw. */
export const PANELS = 10;
export const PANELS_DRAWN = 16;

/** rad. Rays keep this far off the corners of the rim, where the rim jumps. */
const ASIDE = 1e-9;
const TURN_TOLERANCE = 1e-8;

/** A range of directions between two corners of the rim, looked at. */
export interface Sector extends Range {
  readonly looked: Looked;
  /** Whether it is the whole turn, so that its ends are none. */
  readonly isWhole: boolean;
}

/** A ray that crosses the pressed patch. */
export interface PressedRay {
  readonly ray: Ray;
  /** dω, rad */
  readonly weight: number;
  readonly parts: readonly RayPart[];
  /** No farther than this lies the next ray, or the end of the range, to either side, rad. */
  readonly spacing: number;
}

/**
 * The sectors of a face between the corners of its rim, or the whole turn. How high a ball first touches a direction does
 * not change as it is let down, so this is done once.
 */
export function sectorsOf(ball: BallOverFace): readonly Sector[] {
  const corners = cornersOf(ball.face);
  const start = corners[0];
  const touch = touchOver(ball);
  if (start === undefined) {
    const from = Math.atan2(ball.cy, ball.cx) - Math.PI;
    const to = from + 2 * Math.PI;
    const looked = lookAlong(touch, from, to, LOOKS, TURN_TOLERANCE);
    return [{ from, to, looked, isWhole: true }];
  }
  return corners.flatMap((corner, i) => {
    const from = corner + ASIDE;
    const to = (corners[i + 1] ?? start + 2 * Math.PI) - ASIDE;
    if (!(to > from)) return [];
    const count = Math.max(8, Math.ceil(((to - from) / (2 * Math.PI)) * LOOKS));
    return [
      { from, to, looked: lookAlong(touch, from, to, count, TURN_TOLERANCE), isWhole: false },
    ];
  });
}

/** The height (mm) at which a ball that is let down first meets the face; −Infinity where it misses it. */
export function touchHeightOf(sectors: readonly Sector[]): number {
  return sectors.reduce((highest, { looked }) => Math.max(highest, highestOf(looked)), -Infinity);
}

/** Goes over the rays that cross the patch a ball at this height presses. */
export function overRays(
  ball: BallOverFace,
  sectors: readonly Sector[],
  height: number,
  panels: number,
  visit: (pressed: PressedRay) => void,
): void {
  for (const sector of sectors) {
    const ranges = rangesAbove(touchOver(ball), sector.looked, height, TURN_TOLERANCE);
    for (const range of ranges) {
      const isWhole = sector.isWhole && range.from === sector.from && range.to === sector.to;
      overRange(ball, range, isWhole, height, panels, visit);
    }
  }
}

/**
 * The rays of one range. At its ends the patch closes like a root, which a sine square as variable takes away. A whole turn
 * has no ends.
 */
function overRange(
  ball: BallOverFace,
  { from, to }: Range,
  isWhole: boolean,
  height: number,
  panels: number,
  visit: (pressed: PressedRay) => void,
): void {
  const turn = to - from;
  for (let panel = 0; panel < panels; panel++) {
    for (let node = 0; node < 3; node++) {
      const part = (panel + (GAUSS_NODES[node] ?? 0)) / panels;
      const share = (GAUSS_WEIGHTS[node] ?? 0) / panels;
      const angle = from + turn * (isWhole ? part : Math.sin((Math.PI / 2) * part) ** 2);
      const stretch = isWhole ? 1 : (Math.PI / 2) * Math.sin(Math.PI * part);
      const ray = rayAt(ball.face, angle);
      visit({
        ray,
        weight: turn * share * stretch,
        parts: pressedParts(ball, ray, height),
        spacing: turn / panels,
      });
    }
  }
}

function touchOver(ball: BallOverFace): (angle: number) => number {
  return (angle) => firstTouch(ball, rayAt(ball.face, angle));
}

/** Directions of the corners of the rim, rad, rising within one turn; none for a whole rim. */
function cornersOf({ rim }: Face): readonly number[] {
  if (rim.pieces.some(({ piece }) => piece.closed)) return [];
  const turns = rim.pieces.map(({ first }) => {
    const angle = Math.atan2(rim.y[first] ?? 0, rim.x[first] ?? 0);
    return angle < 0 ? angle + 2 * Math.PI : angle;
  });
  return turns
    .sort((a, b) => a - b)
    .filter((angle, i, all) => angle - (all[i - 1] ?? -1) > 4 * ASIDE);
}
