import { BODY } from '../../figures/section.ts';
import { fixed, type Point, type View } from '../../figures/view.ts';
import type { Pair } from './pair.ts';

/** Where the two curves and their measures stand, on the screen. */
export interface PairFigure {
  readonly ball: { readonly centre: Point; readonly top: Point; readonly radius: number };
  readonly socket: { readonly centre: Point; readonly top: Point; readonly radius: number };
  readonly rims: { readonly left: Point; readonly right: Point };
  readonly deepest: Point;
  /** Where the ball's radius is drawn to. */
  readonly onBall: Point;
  /** The angle of the arc, about the socket's centre. */
  readonly angle: { readonly path: string; readonly foot: Point };
  /** The way of the ball's centre while it is off the rim, and its place at first rim contact. */
  readonly way: string;
  readonly atRim: Point;
  /** Where the width is dimensioned, under the bone. */
  readonly widthLine: number;
}

/** Direction in which the ball's radius is drawn, from the right upward, rad. */
const BALL_RADIUS_TURN = 1.3;
const ANGLE_SHARE = 0.56;

export function pairFigure({ socket, ballRadius, mismatch }: Pair, view: View): PairFigure {
  const { curvatureRadius, halfArc, width, depth } = socket;
  const at = (x: number, z: number): Point => ({ x: view.x(x), y: view.y(z) });
  const about = (radius: number, turn: number): Point =>
    at(radius * Math.sin(turn), curvatureRadius - radius * Math.cos(turn));
  const arc = (radius: number): string => {
    const [from, to] = [about(radius, -halfArc), about(radius, halfArc)];
    const r = fixed(radius * view.scale);
    return `M${fixed(from.x)} ${fixed(from.y)}A${r} ${r} 0 0 0 ${fixed(to.x)} ${fixed(to.y)}`;
  };
  return {
    ball: {
      centre: at(0, ballRadius),
      top: at(0, 2 * ballRadius),
      radius: ballRadius * view.scale,
    },
    socket: {
      centre: at(0, curvatureRadius),
      top: at(0, 2 * curvatureRadius),
      radius: curvatureRadius * view.scale,
    },
    rims: { left: at(-width / 2, depth), right: at(width / 2, depth) },
    deepest: at(0, 0),
    onBall: at(
      ballRadius * Math.cos(BALL_RADIUS_TURN),
      ballRadius * (1 + Math.sin(BALL_RADIUS_TURN)),
    ),
    angle: {
      path: arc(curvatureRadius * ANGLE_SHARE),
      foot: about(curvatureRadius * ANGLE_SHARE, 0),
    },
    way: mismatch > 0 ? arc(mismatch) : '',
    atRim: about(mismatch, halfArc),
    widthLine: view.y(-BODY.thickness - BODY.bone),
  };
}
