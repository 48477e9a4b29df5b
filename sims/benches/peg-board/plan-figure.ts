import { fixed, polyline, type Point, type View } from '../../figures/view.ts';
import { reachOfFace } from './outline.ts';
import type { Seat } from './seat.ts';

/** Places of the plan as a closed line on the screen. */
export function closedLine(places: readonly Point[], view: View): string {
  return `${polyline(places.map(({ x, y }) => ({ x: view.x(x), y: view.y(y) })))}Z`;
}

export function openLine(places: readonly Point[], view: View): string {
  return polyline(places.map(({ x, y }) => ({ x: view.x(x), y: view.y(y) })));
}

/** The rim of the face, a ledge inside the edge of the back, mm. */
export function faceLine({ curve }: Seat): readonly Point[] {
  return Array.from({ length: 90 }, (_, i) => {
    const reach = reachOfFace(curve, 4 * i);
    const turn = (4 * i * Math.PI) / 180;
    return { x: reach * Math.cos(turn), y: reach * Math.sin(turn) };
  });
}

/** A ring of fins or teeth round a peg, px. */
export function finLine(centre: Point, inner: number, outer: number, fins: number): string {
  const points = Array.from({ length: 2 * fins }, (_, i) => {
    const turn = (Math.PI * i) / fins;
    const radius = i % 2 === 0 ? outer : inner;
    return { x: centre.x + radius * Math.cos(turn), y: centre.y + radius * Math.sin(turn) };
  });
  return `${polyline(points)}Z`;
}

/** A wedge of the rose between two radii round a bearing, px. */
export function wedge(
  centre: Point,
  bearing: number,
  half: number,
  from: number,
  to: number,
): string {
  const at = (degrees: number, radius: number): string => {
    const turn = (degrees * Math.PI) / 180;
    return `${fixed(centre.x + radius * Math.cos(turn))} ${fixed(centre.y - radius * Math.sin(turn))}`;
  };
  const [low, high] = [bearing - half, bearing + half];
  return (
    `M${at(low, from)}L${at(low, to)}A${fixed(to)} ${fixed(to)} 0 0 0 ${at(high, to)}` +
    `L${at(high, from)}A${fixed(from)} ${fixed(from)} 0 0 1 ${at(low, from)}Z`
  );
}
