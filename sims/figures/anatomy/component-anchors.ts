import type { SphericalSocket } from '../../geometry/index.ts';
import type { Point } from './path.ts';
import { component, surfaceAt, surfacePoints } from './socket-component.ts';

/* What stands on the back of a socket component, in the axes of `component-section.ts`. */

type Run = readonly Point[];
const half = component.lowerWidth / 2;
const { thickness: back, mantle, cementBed, tray } = component;

/** The underside from +x to −x, with the anchors that stand on it. */
export function underside(
  socket: SphericalSocket,
  anchors: readonly Run[],
  depth: number,
): readonly Run[] {
  const runs: Run[] = [];
  let x = half;
  for (const anchor of anchors.toSorted((a, b) => (b[0]?.[0] ?? 0) - (a[0]?.[0] ?? 0))) {
    const first = anchor[0];
    const last = anchor.at(-1);
    if (!first || !last) continue;
    runs.push(surfacePoints(socket, x, first[0], depth), ...corners(anchor));
    x = last[0];
  }
  return [...runs, surfacePoints(socket, x, -half, depth)];
}

/** Straight pieces between the points of an anchor's outline. */
function corners(points: Run): readonly Run[] {
  return points.slice(1).map((point, i) => [points[i] ?? point, point]);
}

/** An anchor's outline from its right flank, given as [half width, height under the back], round to its left. */
export function square(socket: SphericalSocket, x: number, flank: Run, depth: number): Run {
  const base = surfaceAt(socket, x, depth);
  const right = flank.map(([w, y], i): Point => [
    x + w,
    i === 0 ? surfaceAt(socket, x + w, depth) : base + y,
  ]);
  const left = flank.map(([w, y], i): Point => [
    x - w,
    i === 0 ? surfaceAt(socket, x - w, depth) : base + y,
  ]);
  return [...right, ...left.toReversed()];
}

interface Anchor {
  readonly body: Run;
  readonly bed: Run;
}

/** A round peg with three grooves, in a bed of cement. */
export function pegAt(socket: SphericalSocket, x: number): Anchor {
  const r = 2.1;
  const grooves = [-2.6, -4.8, -7].flatMap((y): Run => [
    [r, y],
    [r - 0.55, y - 0.4],
    [r - 0.55, y - 0.9],
    [r, y - 1.3],
  ]);
  const body: Run = [[r, 0], ...grooves, [r, -9.4], [r - 0.9, -10.4]];
  const bed: Run = [
    [r + mantle, 0],
    [r + mantle, -9.4],
    [r, -11.4],
  ];
  return {
    body: square(socket, x, body, back),
    bed: square(socket, x, bed, back + cementBed),
  };
}

/** A keel seen end on, waisted so that cement grips it. */
export function keel(socket: SphericalSocket): Anchor {
  const body: Run = [
    [2.9, 0],
    [2.4, -2.6],
    [1.7, -4.2],
    [1.7, -6.4],
    [2.5, -8],
    [2.3, -11],
    [1.5, -12.2],
  ];
  const bed: Run = [
    [2.9 + mantle, 0],
    [2.5 + mantle, -4],
    [2.5 + mantle, -10.8],
    [1.8, -13.2],
  ];
  return { body: square(socket, 0, body, back), bed: square(socket, 0, bed, back + cementBed) };
}

/** Right flank of a metal post. */
export const postFlank: Run = [
  [4, 0],
  [3.8, -5],
  [3.3, -11],
  [2.2, -13.2],
];

/** Where the metal is rough for bone to grow in: the underside and the post. */
export function ingrowth(socket: SphericalSocket): readonly Run[] {
  return underside(socket, [square(socket, 0, postFlank, back + tray)], back + tray);
}
