import { describe, expect, test } from 'vitest';
import { socketFromDepth, sphericalSocket } from '../../../sims/geometry/index.ts';
import { discOutline } from '../../../sims/physics/disc-outline.ts';
import { socketProfile, type Polygon } from '../../../sims/physics/socket-profile.ts';
import { cross, lengthOf, plus, type Vector } from '../../../sims/physics/vector.ts';
import { describeCup, gridOfCups } from './cups.ts';

/** Each edge of a polygon as a pair of corners. */
function edgesOf(polygon: Polygon): readonly (readonly [Vector, Vector])[] {
  return polygon.map((from, i) => [from, polygon[(i + 1) % polygon.length] ?? from]);
}

/** Smallest turn from one edge to the next: positive for a strictly convex outline that turns from x toward z. */
function smallestTurn(polygon: Polygon): number {
  const ways = edgesOf(polygon).map(([from, to]) => plus(to, from, -1));
  return Math.min(...ways.map((way, i) => cross(way, ways[(i + 1) % ways.length] ?? way)));
}

const shapes = gridOfCups().filter((_, i) => i % 5 === 0);

describe('socketProfile', () => {
  test.each(shapes.map((cup) => [describeCup(cup), cup] as const))(
    'convex pieces, facets tangent to the arc, the rim exact: %s',
    (_, { socket, ballRadius }) => {
      const { pieces, facetAngles, rims, stops } = socketProfile(socket, ballRadius);
      for (const piece of [...pieces, ...stops]) expect(smallestTurn(piece)).toBeGreaterThan(0);
      expect(pieces.length).toBe(facetAngles.length);
      expect(facetAngles.at(-1)).toBe(socket.halfArc);
      expect(facetAngles[0]).toBe(-socket.halfArc);
      expect(rims[1]).toEqual({ x: socket.width / 2, z: socket.depth });
      const centre = { x: 0, z: socket.curvatureRadius };
      pieces.forEach((piece, i) => {
        const angle = facetAngles[i] ?? NaN;
        const along = { x: Math.cos(angle), z: Math.sin(angle) };
        const facet = edgesOf(piece).find(
          ([from, to]) =>
            Math.abs(cross(along, plus(to, from, -1))) < 1e-9 * socket.curvatureRadius &&
            Math.max(from.z, to.z) > Math.min(0, ...piece.map(({ z }) => z)) + 1e-6,
        );
        if (!facet) throw new Error(`piece ${i} has no facet at ${angle}`);
        const distance = Math.abs(cross(along, plus(centre, facet[0], -1)));
        expect(distance / socket.curvatureRadius).toBeCloseTo(1, 9);
      });
    },
  );

  test('left and right are mirror images', () => {
    const { pieces } = socketProfile(sphericalSocket({ curvatureRadius: 30, width: 40 }), 24);
    const turned = pieces.map((piece) =>
      piece.map(({ x, z }) => ({ x: x === 0 ? 0 : -x, z })).reverse(),
    );
    expect(turned.reverse()).toEqual(pieces);
  });

  test('a flat socket is one level slab from stop to stop', () => {
    const { pieces, facetAngles } = socketProfile(socketFromDepth({ depth: 0, width: 30 }), 24);
    expect(facetAngles).toEqual([]);
    expect(pieces).toHaveLength(1);
    expect(Math.max(...(pieces[0] ?? []).map(({ z }) => z))).toBe(0);
  });

  test('throws for a ball larger than the socket’s radius of curvature', () => {
    const socket = sphericalSocket({ curvatureRadius: 24, width: 30 });
    expect(() => socketProfile(socket, 25)).toThrow(RangeError);
  });
});

describe('discOutline', () => {
  test.each(shapes.map((cup) => [describeCup(cup), cup] as const))(
    'convex, on the circle, a corner opposite each facet: %s',
    (_, { socket, ballRadius }) => {
      const { facetAngles } = socketProfile(socket, ballRadius);
      const outline = discOutline(ballRadius, facetAngles);
      expect(smallestTurn(outline)).toBeGreaterThan(0);
      for (const corner of outline) expect(lengthOf(corner)).toBeCloseTo(ballRadius, 9);
      for (const angle of [...facetAngles, 0]) {
        const reach = Math.max(
          ...outline.map(({ x, z }) => x * Math.sin(angle) - z * Math.cos(angle)),
        );
        expect(reach).toBeCloseTo(ballRadius, 9);
      }
    },
  );
});
