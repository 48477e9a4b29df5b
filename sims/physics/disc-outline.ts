import { COARSE_OUTLINE, FINE_OUTLINE } from './constants.ts';
import type { Polygon } from './socket-profile.ts';

/**
 * The ball's outline as a polygon about its centre, corners on the true circle.
 *
 * A corner lies opposite every facet, so that the polygon reaches each facet exactly where the circle would. Between
 * them, where the rim can touch, corners stand so close that the polygon is at most r(1 − cos 0.5°) inside the circle,
 * 1.1 µm on a 60 mm ball.
 *
 * @param radius mm
 * @param facetAngles tilts of the socket's facets, rad, rising; empty for a flat socket
 * @returns corners relative to the centre, mm, turning from x toward z
 */
export function discOutline(radius: number, facetAngles: readonly number[]): Polygon {
  const widest = facetAngles.at(-1) ?? 0;
  const end = Math.min(Math.PI, widest + FINE_OUTLINE);
  const touching = [-end, ...facetAngles, 0, end].sort((a, b) => a - b);
  const lower = touching.flatMap((angle, i) =>
    divided(angle, touching[i + 1] ?? angle, FINE_OUTLINE),
  );
  const upper = divided(end, 2 * Math.PI - end, COARSE_OUTLINE);
  return [...lower, ...upper].map((angle) => ({
    x: radius * Math.sin(angle),
    z: -radius * Math.cos(angle),
  }));
}

/** Angles from `start` up to, not including, `end`, evenly and at most `spacing` apart. */
function divided(start: number, end: number, spacing: number): readonly number[] {
  const count = Math.ceil((end - start) / spacing - 1e-9);
  return Array.from({ length: count }, (_, i) => start + ((end - start) * i) / count);
}
