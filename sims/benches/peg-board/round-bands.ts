import type { Point } from '../../figures/view.ts';
import type { Band, LevelLine } from './bands.ts';
import { extremeOf, gapAt, type Tilt } from './tilt.ts';

/** Rays on which the lines of a round back are looked for. */
const RAYS = 180;
const HALVINGS = 26;

/**
 * The round back cut along its lines of one separation. Its separation has one lowest place or one highest; from that place
 * it grows or falls along every ray, so that each line crosses every ray once at the most.
 */
export function roundBands(
  edge: readonly Point[],
  tilt: Tilt,
  levels: readonly (readonly [number, number])[],
): readonly Band[] {
  const rays = raysOf(edge, tilt);
  const sign = tilt.a > 0 ? -1 : 1;
  return levels.flatMap(([from, to]) => {
    // Nearer to the middle of the rays first.
    const [near, far] = sign * from < sign * to ? [from, to] : [to, from];
    const inner = rays.map((ray) => reachOf(ray, tilt, near));
    const outer = rays.map((ray) => reachOf(ray, tilt, far));
    if (outer.every((reach, i) => reach - (inner[i] ?? 0) < 1e-9)) return [];
    const hole = inner.some((reach) => reach > 0) ? closed(rays, inner).reverse() : [];
    return [{ from, to, line: [...closed(rays, outer), ...hole] }];
  });
}

/** The lines of given separations on a round back, each in as many runs as the edge cuts it into. */
export function roundLines(
  edge: readonly Point[],
  tilt: Tilt,
  gaps: readonly number[],
): readonly LevelLine[] {
  const rays = raysOf(edge, tilt);
  return gaps.flatMap((gap) => runsOf(rays, tilt, gap).map((line) => ({ gap, line })));
}

function runsOf(rays: readonly Ray[], tilt: Tilt, gap: number): readonly (readonly Point[])[] {
  const reach = rays.map((ray) => reachOf(ray, tilt, gap));
  const isOn = reach.map((each, i) => each > 0 && each < (rays[i]?.end ?? 0) - 1e-9);
  if (!isOn.includes(true)) return [];
  const all = closed(rays, reach);
  if (!isOn.includes(false)) return [all];
  const first = isOn.findIndex((on, i) => on && isOn.at(i - 1) === false);
  const runs: Point[][] = [];
  for (let k = 0, run: Point[] = []; k <= RAYS; k++) {
    const i = (first + k) % RAYS;
    const at = all[i];
    if (isOn[i] === true && at !== undefined && k < RAYS) run.push(at);
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
  }
  return runs.filter((run) => run.length > 1);
}

interface Ray {
  readonly from: Point;
  readonly along: Point;
  /** Where it meets the edge, mm */
  readonly end: number;
}

function raysOf(edge: readonly Point[], tilt: Tilt): readonly Ray[] {
  const from = extremeOf(edge, tilt);
  return Array.from({ length: RAYS }, (_, i) => {
    const turn = (2 * Math.PI * i) / RAYS;
    const along = { x: Math.cos(turn), y: Math.sin(turn) };
    return { from, along, end: endOf(edge, from, along) };
  });
}

/** How far a ray from inside a convex run of places goes until it leaves it, mm. */
function endOf(edge: readonly Point[], from: Point, along: Point): number {
  let end = 0;
  edge.forEach((a, i) => {
    const b = edge[(i + 1) % edge.length] ?? a;
    const [ax, ay, bx, by] = [a.x - from.x, a.y - from.y, b.x - a.x, b.y - a.y];
    const across = along.x * by - along.y * bx;
    if (Math.abs(across) < 1e-12) return;
    const reach = (ax * by - ay * bx) / across;
    const share = (ax * along.y - ay * along.x) / across;
    if (share >= -1e-9 && share <= 1 + 1e-9) end = Math.max(end, reach);
  });
  return end;
}

/** How far along a ray the separation comes to a value; 0 where it is past it from the start, its end where it never is. */
function reachOf({ from, along, end }: Ray, tilt: Tilt, gap: number): number {
  const sign = tilt.a > 0 ? -1 : 1;
  const isBefore = (reach: number): boolean =>
    sign * (gapAt(tilt, { x: from.x + reach * along.x, y: from.y + reach * along.y }) - gap) < 0;
  if (!isBefore(0)) return 0;
  if (isBefore(end)) return end;
  let [low, high] = [0, end];
  for (let i = 0; i < HALVINGS; i++) {
    const half = (low + high) / 2;
    if (isBefore(half)) low = half;
    else high = half;
  }
  return (low + high) / 2;
}

/** Places at given distances on the rays, back to the first. */
function closed(rays: readonly Ray[], reach: readonly number[]): Point[] {
  const places = rays.map(({ from, along }, i) => ({
    x: from.x + (reach[i] ?? 0) * along.x,
    y: from.y + (reach[i] ?? 0) * along.y,
  }));
  const [first] = places;
  return first === undefined ? [] : [...places, first];
}
