import { curveCatmullRom, line } from 'd3-shape';
import { climbAt, contactAt, type SphericalSocket } from '../geometry/index.ts';
import { polyline, type Point, type View } from './view.ts';

/** Sizes of the drawn body round the articular surface, mm: teaching values, nothing is computed from them. */
export const BODY = { rimLedge: 3, thickness: 5, bone: 9, boneMargin: 9 } as const;

const ARC_POINTS = 48;

/** Height of the articular surface above its deepest point at `x` mm from the middle. */
export function surfaceHeight(socket: SphericalSocket, x: number): number {
  if (socket.halfArc === 0) return 0;
  const { curvatureRadius: radius } = socket;
  return x ** 2 / (radius + Math.sqrt(Math.max(0, radius ** 2 - x ** 2)));
}

/** The articular surface from rim to rim, on the screen. */
export function surfaceLine(socket: SphericalSocket, view: View): readonly Point[] {
  const half = socket.width / 2;
  return Array.from({ length: ARC_POINTS + 1 }, (_, i) => {
    const angle = socket.halfArc * ((2 * i) / ARC_POINTS - 1);
    const x =
      socket.halfArc === 0
        ? half * ((2 * i) / ARC_POINTS - 1)
        : half * (Math.sin(angle) / Math.sin(socket.halfArc));
    return { x: view.x(x), y: view.y(surfaceHeight(socket, x)) };
  });
}

/** Outline of the component in section: hollow, rim ledges, sides and flat back. */
export function componentOutline(socket: SphericalSocket, view: View): string {
  const outer = socket.width / 2 + BODY.rimLedge;
  const back = -BODY.thickness;
  const taper = 0.8;
  const corner = (x: number, z: number): Point => ({ x: view.x(x), y: view.y(z) });
  return `${polyline([
    corner(-outer, socket.depth),
    ...surfaceLine(socket, view),
    corner(outer, socket.depth),
    corner(outer - taper, back),
    corner(-outer + taper, back),
  ])}Z`;
}

/** The bone under the component: its filled outline, and the two lines that bound it. */
export interface BoneShape {
  readonly fill: string;
  /** The surface the component stands on: a cortical edge. */
  readonly top: string;
  /** Where the drawing leaves off, though the bone goes on. */
  readonly brokenEdge: string;
}

/** A slab of bone as wide as it needs to be; its sides and foot are break lines, for the bone goes on. */
export function boneShape(socket: SphericalSocket, view: View): BoneShape {
  const outer = socket.width / 2 + BODY.rimLedge + BODY.boneMargin;
  const top = -BODY.thickness;
  const bottom = top - BODY.bone;
  const ripple = 0.55;
  const corners = [
    { x: outer, z: top },
    { x: outer, z: bottom },
    { x: -outer, z: bottom },
    { x: -outer, z: top },
  ];
  const points = corners.flatMap((from, i) => {
    const to = corners[i + 1];
    if (to === undefined) return [from];
    const length = Math.hypot(to.x - from.x, to.z - from.z);
    const waves = Math.max(2, Math.round(length / 5));
    const across = { x: (to.z - from.z) / length, z: -(to.x - from.x) / length };
    return Array.from({ length: waves }, (_, j) => {
      const share = j / waves;
      const swing = j === 0 ? 0 : j % 2 === 0 ? ripple : -ripple;
      return {
        x: from.x + (to.x - from.x) * share + across.x * swing,
        z: from.z + (to.z - from.z) * share + across.z * swing,
      };
    });
  });
  const broken = smooth(points.map(({ x, z }) => ({ x: view.x(x), y: view.y(z) })));
  return {
    fill: `${broken}Z`,
    top: polyline([
      { x: view.x(-outer), y: view.y(top) },
      { x: view.x(outer), y: view.y(top) },
    ]),
    brokenEdge: broken,
  };
}

/** A line through the points without corners. */
function smooth(points: readonly Point[]): string {
  return (
    line<Point>(
      ({ x }) => x,
      ({ y }) => y,
    )
      .curve(curveCatmullRom)
      .digits(2)([...points]) ?? ''
  );
}

/** Where the ball touches the socket when its centre stands `translation` mm off; mm, x right and z up. */
export function contactPoint(
  socket: SphericalSocket,
  ballRadius: number,
  translation: number,
): { readonly x: number; readonly z: number } {
  const { angle } = contactAt(socket, ballRadius, translation);
  const centre = ballRadius + climbAt(socket, ballRadius, translation);
  return {
    x: translation + ballRadius * Math.sin(angle),
    z: centre - ballRadius * Math.cos(angle),
  };
}
