import { fixed, type Point } from '../../figures/view.ts';

/** Screen angles, rad, clockwise from the right. */
const place = ({ x, y }: Point, radius: number, angle: number): string =>
  `${fixed(x + radius * Math.cos(angle))} ${fixed(y + radius * Math.sin(angle))}`;

/** Path data of a sector of a ring, or of a disc where `inner` is 0, between two angles less than a turn apart. */
export function sector(
  centre: Point,
  [inner, outer]: readonly [number, number],
  [from, to]: readonly [number, number],
): string {
  const isLarge = Math.abs(to - from) > Math.PI ? 1 : 0;
  const sweep = to > from ? 1 : 0;
  const ring = (radius: number, angle: number, turn: number): string =>
    `A${fixed(radius)} ${fixed(radius)} 0 ${isLarge} ${turn} ${place(centre, radius, angle)}`;
  const start = inner === 0 ? fixed(centre.x) + ' ' + fixed(centre.y) : place(centre, inner, from);
  const back =
    inner === 0 ? '' : `L${place(centre, inner, to)}${ring(inner, from, sweep === 1 ? 0 : 1)}`;
  return `M${start}L${place(centre, outer, from)}${ring(outer, to, sweep)}${back}Z`;
}

/** Path data of an arc alone. */
export function arcLine(
  centre: Point,
  radius: number,
  [from, to]: readonly [number, number],
): string {
  const isLarge = Math.abs(to - from) > Math.PI ? 1 : 0;
  const end = place(centre, radius, to);
  return `M${place(centre, radius, from)}A${fixed(radius)} ${fixed(radius)} 0 ${isLarge} ${to > from ? 1 : 0} ${end}`;
}

/** Path data of straight spokes from one radius to another. */
export function spokes(
  centre: Point,
  [inner, outer]: readonly [number, number],
  angles: readonly number[],
): string {
  return angles
    .map((angle) => `M${place(centre, inner, angle)}L${place(centre, outer, angle)}`)
    .join('');
}
