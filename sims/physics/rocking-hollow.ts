import { lengthOf, plus, type Vector } from './vector.ts';

/** A hollow in section: an arc from rim to rim, its deepest point at the origin. */
export interface Hollow {
  /** mm */
  readonly curvatureRadius: number;
  /** rad */
  readonly halfArc: number;
}

/** Where a ball next touches a hollow: the place, and the unit normal there into the ball. */
export interface HollowContact {
  readonly at: Vector;
  readonly normal: Vector;
}

/** The place of the hollow nearest to the ball’s centre, both in the socket’s own frame; beyond the arc it is the rim. */
export function nearestOnHollow(
  { curvatureRadius, halfArc }: Hollow,
  centre: Vector,
): HollowContact {
  const middle = { x: 0, z: curvatureRadius };
  const angle = Math.atan2(centre.x, middle.z - centre.z);
  const place = Math.max(-halfArc, Math.min(halfArc, angle));
  const at = {
    x: curvatureRadius * Math.sin(place),
    z: curvatureRadius * (1 - Math.cos(place)),
  };
  if (place === angle) return { at, normal: { x: -Math.sin(place), z: Math.cos(place) } };
  const way = plus(centre, at, -1);
  const length = lengthOf(way);
  return { at, normal: { x: way.x / length, z: way.z / length } };
}

/** A vector turned from x toward z. */
export function turned({ x, z }: Vector, angle: number): Vector {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return { x: x * cos - z * sin, z: z * cos + x * sin };
}

/** A ball’s centre when it touches the hollow at an angle from the middle, in the socket’s frame. */
export function centreAt({ curvatureRadius }: Hollow, ballRadius: number, angle: number): Vector {
  const mismatch = curvatureRadius - ballRadius;
  return { x: mismatch * Math.sin(angle), z: curvatureRadius - mismatch * Math.cos(angle) };
}
