import { curveCatmullRom, curveCatmullRomClosed, line } from 'd3-shape';

/** A point: mm (x to the right, y up) before {@link sheetFrame}, drawing units (y down) after it. */
export type Point = readonly [number, number];

const through = line<Point>().curve(curveCatmullRom.alpha(0.5)).digits(1);
const around = line<Point>().curve(curveCatmullRomClosed.alpha(0.5)).digits(1);
const straight = line<Point>().digits(1);

/** Path data of a smooth open curve through the points. */
export function smoothOpen(points: readonly Point[]): string {
  return through(points) ?? '';
}

/** Path data of a smooth closed curve through the points, with no corner. */
export function smoothClosed(points: readonly Point[]): string {
  return around(points) ?? '';
}

/** Path data of straight lines through the points. */
export function polyline(points: readonly Point[]): string {
  return straight(points) ?? '';
}

/**
 * Path data of a closed outline made of smooth runs that meet in corners.
 *
 * @param runs each run goes on from the end of the one before; the last is closed to the first
 */
export function outline(runs: readonly (readonly Point[])[]): string {
  return `${openRuns(runs)}Z`;
}

/** Path data of a line made of smooth runs that meet in corners, left open. */
export function openRuns(runs: readonly (readonly Point[])[]): string {
  return runs
    .map((run, i) => (i === 0 ? smoothOpen(run) : smoothOpen(run).replace(/^M/, 'L')))
    .join('');
}

/** Points on a circular arc, both ends included; angles in degrees, counter-clockwise from the x axis. */
export function arcPoints(
  centre: Point,
  radius: number,
  fromDegrees: number,
  toDegrees: number,
  count: number,
): readonly Point[] {
  return Array.from({ length: count }, (_, i) => {
    const angle = radians(fromDegrees + ((toDegrees - fromDegrees) * i) / (count - 1));
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)] as const;
  });
}

/** Maps mm, y up, to drawing units, y down; `origin` is where 0, 0 comes to lie and `scale` the units per mm. */
export function sheetFrame(origin: Point, scale: number): (point: Point) => Point {
  return ([x, y]) => [origin[0] + x * scale, origin[1] - y * scale];
}

/** Maps a part's own axes (u along `degrees`, v a quarter turn counter-clockwise from it) to the drawing's, in mm. */
export function partFrame(origin: Point, degrees: number): (point: Point) => Point {
  const cos = Math.cos(radians(degrees));
  const sin = Math.sin(radians(degrees));
  return ([u, v]) => [origin[0] + u * cos - v * sin, origin[1] + u * sin + v * cos];
}

/** The same frame at a mirrored v: v runs a quarter turn clockwise from u. */
export function mirroredPartFrame(origin: Point, degrees: number): (point: Point) => Point {
  const place = partFrame(origin, degrees);
  return ([u, v]) => place([u, -v]);
}

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Points about 0, 0 given as [degrees counter-clockwise from the x axis, radius]. */
export function polarPoints(
  polar: readonly (readonly [degrees: number, radius: number])[],
): readonly Point[] {
  return polar.map(([degrees, radius]) => [
    radius * Math.cos(radians(degrees)),
    radius * Math.sin(radians(degrees)),
  ]);
}
