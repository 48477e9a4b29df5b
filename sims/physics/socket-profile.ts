import { isFlat, radialMismatch, type SphericalSocket } from '../geometry/index.ts';
import {
  FEWEST_FACETS,
  LONGEST_FACET_OF_CENTRE,
  MOST_FACETS,
  REACH,
  THICKNESS,
  WIDEST_FACET,
} from './constants.ts';
import { clamp, type Vector } from './vector.ts';

/** A convex outline, mm, its corners turning from x toward z. */
export type Polygon = readonly Vector[];

/** The socket as the engine sees it, mm: x along the push, z out of the socket, origin at its deepest point. */
export interface SocketProfile {
  /** The hollow with the flat shoulders beside it, cut into convex pieces, left to right. */
  readonly pieces: readonly Polygon[];
  /** Blocks that stop the ball far outside the socket. */
  readonly stops: readonly Polygon[];
  /** Tilt of each facet, rad, left to right; the outermost two are those of the rim. Empty for a flat socket. */
  readonly facetAngles: readonly number[];
  /** Angle between neighbouring facets, rad; 0 for a flat socket. */
  readonly facetSpacing: number;
  /** The two corners of the rim. */
  readonly rims: readonly Vector[];
  /** Translation at which the ball's centre is stopped, mm. */
  readonly stopTranslation: number;
}

/**
 * The socket of a ball in convex pieces that an engine can collide with.
 *
 * The arc becomes an even number of facets, each tangent to it, the outermost two tangent exactly at the rim. So the
 * steepest facet has the rim's slope, tan β, and not that of a chord, and a ball sliding up it reaches the true rim. The
 * outermost piece carries the flat shoulder as well, so its convex corner is the rim. No facet is level: the ball finds
 * the middle.
 *
 * @param ballRadius mm, above 0 and at most the socket's radius of curvature
 * @throws RangeError as {@link radialMismatch}
 */
export function socketProfile(socket: SphericalSocket, ballRadius: number): SocketProfile {
  const mismatch = radialMismatch(socket, ballRadius);
  const halfWidth = socket.width / 2;
  const stopTranslation = halfWidth + REACH * ballRadius;
  const base = -THICKNESS * ballRadius;
  const end = stopTranslation + ballRadius;
  const top = socket.depth + 3 * ballRadius;
  const stop = box(end, end + ballRadius, base, top);
  const stops = [mirrored(stop), stop];
  const rims = [-1, 1].map((side) => ({ x: side * halfWidth, z: socket.depth }));
  const common = { stops, rims, stopTranslation };
  if (isFlat(socket)) {
    return { ...common, facetAngles: [], facetSpacing: 0, pieces: [box(-end, end, base, 0)] };
  }
  const pairs = countOfFacetPairs(socket.halfArc, mismatch);
  const facetSpacing = socket.halfArc / (pairs - 0.5);
  const right = Array.from({ length: pairs }, (_, i) =>
    i === pairs - 1 ? socket.halfArc : facetSpacing * (i + 0.5),
  );
  const facetAngles = [...right.map((angle) => -angle).reverse(), ...right];
  const rightPieces = piecesUnder(socket, right, facetSpacing, base, end);
  const pieces = [...rightPieces.map(mirrored).reverse(), ...rightPieces];
  return { ...common, facetAngles, facetSpacing, pieces };
}

function countOfFacetPairs(halfArc: number, mismatch: number): number {
  const wanted = 2 * halfArc * Math.max(1 / WIDEST_FACET, mismatch / LONGEST_FACET_OF_CENTRE);
  return Math.ceil(clamp(wanted, FEWEST_FACETS, MOST_FACETS) / 2);
}

/** The pieces right of the centre line, outward, one a facet. */
function piecesUnder(
  socket: SphericalSocket,
  angles: readonly number[],
  spacing: number,
  base: number,
  end: number,
): readonly Polygon[] {
  const { curvatureRadius: radius, width, depth } = socket;
  const halfFacet = radius * Math.tan(spacing / 2);
  const facetEnd = (angle: number, side: number): Vector => ({
    x: radius * Math.sin(angle) + side * halfFacet * Math.cos(angle),
    z: 2 * radius * Math.sin(angle / 2) ** 2 + side * halfFacet * Math.sin(angle),
  });
  return angles.map((angle, i) => {
    const isInnermost = i === 0;
    const inner = { ...facetEnd(angle, -1), ...(isInnermost && { x: 0 }) };
    const foot = { x: inner.x, z: base };
    if (i === angles.length - 1) {
      const rim = { x: width / 2, z: depth };
      return [foot, { x: end, z: base }, { x: end, z: depth }, rim, inner];
    }
    const outer = facetEnd(angle, 1);
    return [foot, { x: outer.x, z: base }, outer, inner];
  });
}

function box(left: number, right: number, low: number, high: number): Polygon {
  return [
    { x: left, z: low },
    { x: right, z: low },
    { x: right, z: high },
    { x: left, z: high },
  ];
}

/** The mirror image in the centre line, its corners still turning the same way. */
function mirrored(polygon: Polygon): Polygon {
  return polygon.map(({ x, z }) => ({ x: x === 0 ? 0 : -x, z })).reverse();
}
