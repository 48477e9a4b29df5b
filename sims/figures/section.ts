import { climbAt, contactAt, type SphericalSocket } from '../geometry/index.ts';
import { fixed, polyline, type Point, type View } from './view.ts';

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

/** Outline of the bone under the component; its lower edge is a break line, for the bone goes on. */
export function boneOutline(socket: SphericalSocket, view: View): string {
  const outer = socket.width / 2 + BODY.rimLedge + BODY.boneMargin;
  const top = -BODY.thickness;
  const bottom = top - BODY.bone;
  const waves = 8;
  const breaks = Array.from({ length: waves + 1 }, (_, i) => ({
    x: view.x(outer - (2 * outer * i) / waves),
    y: view.y(bottom + (i === 0 || i === waves ? 0 : i % 2 === 0 ? 0.7 : -0.7)),
  }));
  const [first, ...rest] = breaks;
  let path = `M${fixed(view.x(-outer + 2))} ${fixed(view.y(top))}L${fixed(view.x(outer - 2))} ${fixed(view.y(top))}`;
  if (first) path += `L${fixed(first.x)} ${fixed(first.y)}`;
  let previous = first;
  for (const point of rest) {
    if (previous) {
      const middle = (previous.x + point.x) / 2;
      path += `C${fixed(middle)} ${fixed(previous.y)} ${fixed(middle)} ${fixed(point.y)} ${fixed(point.x)} ${fixed(point.y)}`;
    }
    previous = point;
  }
  return `${path}Z`;
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
