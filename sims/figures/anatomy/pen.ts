import { outline, type Point } from './path.ts';

/**
 * Path data of one pen stroke that swells in the middle and runs out at both ends.
 *
 * @param points the stroke's centre line, drawing units, at least three
 * @param width at the widest, drawing units
 */
export function penStroke(points: readonly Point[], width: number): string {
  const last = points.length - 1;
  const side = (sign: 1 | -1): readonly Point[] =>
    points.map((point, i) => {
      const [nx, ny] = normalAt(points, i);
      const half = (sign * width * Math.sin((Math.PI * i) / last)) / 2;
      return [point[0] + nx * half, point[1] + ny * half];
    });
  return outline([side(1), side(-1).toReversed()]);
}

/**
 * Centre lines of fibres laid between two edges, each starting and ending a little differently, as a hand would.
 *
 * @param from, to the two edges with the same number of points, running the same way
 * @param count number of fibres
 * @param reach the part of the length the fibres cover, 0 … 1 at either end
 */
export function fibres(
  from: readonly Point[],
  to: readonly Point[],
  count: number,
  reach: readonly [number, number] = [0, 1],
): readonly (readonly Point[])[] {
  return Array.from({ length: count }, (_, k) => {
    const across = (k + 0.5 + 0.3 * (scatter(k) - 0.5)) / count;
    const start = reach[0] + (reach[1] - reach[0]) * 0.22 * scatter(k + 31);
    const end = reach[1] - (reach[1] - reach[0]) * 0.22 * scatter(k + 57);
    return Array.from({ length: 5 }, (_, i) => {
      const t = start + ((end - start) * i) / 4;
      return between(pointAt(from, t), pointAt(to, t), across);
    });
  });
}

/**
 * The seam where muscle gives way to tendon: they reach into one another like fingers.
 *
 * @param from, to the edges the seam joins, running the same way
 * @param index the point of the edges at which the seam starts and ends
 */
export function teeth(
  from: readonly Point[],
  to: readonly Point[],
  index: number,
): readonly Point[] {
  const last = from.length - 1;
  const count = 8;
  return Array.from({ length: count + 1 }, (_, k) => {
    const isEnd = k === 0 || k === count;
    const shift = isEnd ? 0 : (k % 2 === 0 ? 0.5 : -0.4) + 0.3 * (scatter(k) - 0.5);
    const t = (index + shift) / last;
    return between(pointAt(from, t), pointAt(to, t), k / count);
  });
}

/** The point at part `t` (0 … 1) of a line, by count of its points. */
export function pointAt(points: readonly Point[], t: number): Point {
  const place = Math.min(Math.max(t, 0), 1) * (points.length - 1);
  const index = Math.min(Math.floor(place), points.length - 2);
  const here = points[index];
  const next = points[index + 1];
  if (!here || !next) throw new RangeError('points: a line needs at least two');
  return between(here, next, place - index);
}

/**
 * Points moved inwards along their normals: the inner face of a bone's shell.
 *
 * @param points a closed outline in mm (y up), going either way round
 * @param thickness mm, at each point
 */
export function inset(
  points: readonly Point[],
  thickness: (point: Point) => number,
): readonly Point[] {
  const inwards = signedArea(points) > 0 ? 1 : -1;
  return points.map((point, i) => {
    const before = points[(i + points.length - 1) % points.length] ?? point;
    const after = points[(i + 1) % points.length] ?? point;
    const [nx, ny] = unitNormal(before, after);
    const depth = inwards * thickness(point);
    return [point[0] + nx * depth, point[1] + ny * depth];
  });
}

/** Above 0 for an outline that goes counter-clockwise with y up. */
function signedArea(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
}

function normalAt(points: readonly Point[], i: number): Point {
  const here = points[i] ?? [0, 0];
  return unitNormal(points[i - 1] ?? here, points[i + 1] ?? here);
}

function unitNormal(before: Point, after: Point): Point {
  const dx = after[0] - before[0];
  const dy = after[1] - before[1];
  const length = Math.hypot(dx, dy) || 1;
  return [-dy / length, dx / length];
}

function between(a: Point, b: Point, t: number): Point {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

/** A fixed scatter in 0 … 1 by number, so that every build draws the same lines. */
function scatter(k: number): number {
  const x = Math.sin(k * 127.1 + 11.7) * 43758.5453;
  return x - Math.floor(x);
}
