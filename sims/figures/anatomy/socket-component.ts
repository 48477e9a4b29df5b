import { sphericalSocket, type SphericalSocket } from '../../geometry/index.ts';
import { face, head } from './means.ts';
import { arcPoints, radians, type Point } from './path.ts';

/** How the component holds on to the bone. */
export type Fixation = 'pegs' | 'keel' | 'metal-backed';

/** The component all drawings share: a face of mean size, 3 mm radial mismatch, 4 mm of plastic. Teaching values. */
export const component = {
  height: face.height,
  lowerWidth: face.lowerWidth,
  upperWidth: face.upperWidth,
  radialMismatch: 3,
  ballRadius: head.radiusFront,
  thickness: 4,
  /** Of cement round a peg or keel, and under the back. */
  mantle: 1.2,
  cementBed: 0.8,
  /** Of a metal back. */
  tray: 2.4,
} as const;

/** Its hollow, level through the lower half, where it is widest. */
export function componentSocket(): SphericalSocket {
  return sphericalSocket({
    curvatureRadius: component.ballRadius + component.radialMismatch,
    width: component.lowerWidth,
  });
}

/**
 * A pear of two circles and the lines that touch both, about its middle, mm, y up.
 *
 * @param by how far inside the outline to run, mm
 * @returns runs of a closed outline, clockwise from the upper left
 */
export function pearRuns(by = 0): readonly (readonly Point[])[] {
  const upper = component.upperWidth / 2 - by;
  const lower = component.lowerWidth / 2 - by;
  const top: Point = [0, (component.height - component.upperWidth) / 2];
  const bottom: Point = [0, (component.lowerWidth - component.height) / 2];
  const lean = (Math.asin((lower - upper) / (top[1] - bottom[1])) * 180) / Math.PI;
  const above = arcPoints(top, upper, 180 - lean, lean, 13);
  const below = arcPoints(bottom, lower, lean, -180 - lean, 21);
  return [above, joined(above.at(-1), below[0]), below, joined(below.at(-1), above[0])];
}

function joined(a: Point | undefined, b: Point | undefined): readonly Point[] {
  return a && b ? [a, b] : [];
}

/** Radius on the face of the line that lies `rise` above the deepest point, mm. */
export function levelRadius(socket: SphericalSocket, rise: number): number {
  return Math.sqrt(rise * (2 * socket.curvatureRadius - rise));
}

/** Height of the hollow over its deepest point at distance x from the middle, mm; of its back with `depth` added. */
export function surfaceAt(socket: SphericalSocket, x: number, depth = 0): number {
  const radius = socket.curvatureRadius;
  return radius - Math.sqrt((radius + depth) ** 2 - x ** 2);
}

/** Points along the hollow, or along its back `depth` behind it, from x to x. */
export function surfacePoints(
  socket: SphericalSocket,
  fromX: number,
  toX: number,
  depth = 0,
): readonly Point[] {
  return Array.from({ length: 15 }, (_, i) => {
    const x = fromX + ((toX - fromX) * i) / 14;
    return [x, surfaceAt(socket, x, depth)];
  });
}

/** Points at `radius` from the centre of a ball that rests in the middle of the hollow, lower part, left to right. */
export function ballPoints(radius: number, spread: number): readonly Point[] {
  return arcPoints([0, component.ballRadius], radius, -90 - spread, -90 + spread, 25);
}

/** A point on a circle about `centre` at an angle in degrees. */
export function onCircle(centre: Point, radius: number, degrees: number): Point {
  return [
    centre[0] + radius * Math.cos(radians(degrees)),
    centre[1] + radius * Math.sin(radians(degrees)),
  ];
}

/** Pegs on the back, as [across, up, radius] on the face, mm. */
export const pegs: readonly (readonly [number, number, number])[] = [
  [0, 11, 2.3],
  [-5.6, -6.5, 2.3],
  [5.6, -6.5, 2.3],
];
