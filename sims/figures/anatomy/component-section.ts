import type { SphericalSocket } from '../../geometry/index.ts';
import type { Point } from './path.ts';
import { component, surfaceAt, surfacePoints, type Fixation } from './socket-component.ts';

/*
 * A socket component cut level from front to back, lying with its hollow up. mm, 0, 0 at the deepest point of the
 * hollow, y up. `depth` counts from the hollow towards the bone, square to the surface.
 */

type Run = readonly Point[];

/** Lines of one section; every list is the runs of a closed outline. */
export interface ComponentSection {
  readonly plastic: readonly Run[];
  /** Between component and bone; none behind a metal back. */
  readonly cement: readonly Run[];
  readonly metal: readonly Run[];
}

const half = component.lowerWidth / 2;
export const back = component.thickness;
export const tray = 2.4;
const mantle = component.cement;
const underBack = 0.8;

export function componentSection(socket: SphericalSocket, fixation: Fixation): ComponentSection {
  if (fixation === 'metal-backed') return metalBacked(socket);
  const anchors = fixation === 'pegs' ? [pegAt(socket, -5.6), pegAt(socket, 5.6)] : [keel(socket)];
  const around = anchors.map((anchor) => anchor.bed);
  return {
    plastic: [rimToRim(socket), side(socket, 1, back), ...underside(socket, anchors.map(({ body }) => body), back), side(socket, -1, back)],
    cement: [
      surfacePoints(socket, -half, half, back),
      edge(socket, 1, back, back + underBack),
      ...underside(socket, around, back + underBack),
      edge(socket, -1, back + underBack, back),
    ],
    metal: [],
  };
}

function metalBacked(socket: SphericalSocket): ComponentSection {
  const post = square(socket, 0, postFlank, back + tray);
  return {
    plastic: [
      rimToRim(socket),
      side(socket, 1, back),
      surfacePoints(socket, half, 5, back),
      lock(socket),
      surfacePoints(socket, -5, -half, back),
      side(socket, -1, back),
    ],
    cement: [],
    metal: [
      surfacePoints(socket, -half, half, back),
      edge(socket, 1, back, back + tray),
      ...underside(socket, [post], back + tray),
      edge(socket, -1, back + tray, back),
    ],
  };
}

const postFlank: Run = [
  [4, 0],
  [3.8, -5],
  [3.3, -11],
  [2.2, -13.2],
];

/** Where the metal is rough for bone to grow in: the underside and the post. */
export function ingrowth(socket: SphericalSocket): readonly Run[] {
  return underside(socket, [square(socket, 0, postFlank, back + tray)], back + tray);
}

/** A dovetail keeps the plastic in the metal. */
function lock(socket: SphericalSocket): Run {
  const y = surfaceAt(socket, 5, back);
  return [
    [5, y],
    [5.8, y - 1.3],
    [-5.8, y - 1.3],
    [-5, y],
  ];
}

function rimToRim(socket: SphericalSocket): Run {
  return surfacePoints(socket, -half, half);
}

/** The component's edge, rounded a little, from hollow to back at +x, from back to hollow at −x. */
function side(socket: SphericalSocket, sign: 1 | -1, depth: number): Run {
  const down: Run = [
    [sign * half, surfaceAt(socket, half)],
    [sign * (half + 0.15), surfaceAt(socket, half) - 0.8],
    [sign * half, surfaceAt(socket, half, depth)],
  ];
  return sign === 1 ? down : down.toReversed();
}

function edge(socket: SphericalSocket, sign: 1 | -1, from: number, to: number): Run {
  return [
    [sign * half, surfaceAt(socket, half, from)],
    [sign * half, surfaceAt(socket, half, to)],
  ];
}

/** The underside from +x to −x, with the anchors that stand on it. */
function underside(
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
function square(socket: SphericalSocket, x: number, flank: Run, depth: number): Run {
  const base = surfaceAt(socket, x, depth);
  const right = flank.map(
    ([w, y], i): Point => [x + w, i === 0 ? surfaceAt(socket, x + w, depth) : base + y],
  );
  const left = flank.map(
    ([w, y], i): Point => [x - w, i === 0 ? surfaceAt(socket, x - w, depth) : base + y],
  );
  return [...right, ...left.toReversed()];
}

interface Anchor {
  readonly body: Run;
  readonly bed: Run;
}

/** A round peg with three grooves, in a bed of cement. */
function pegAt(socket: SphericalSocket, x: number): Anchor {
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
    bed: square(socket, x, bed, back + underBack),
  };
}

/** A keel seen end on, waisted so that cement grips it. */
function keel(socket: SphericalSocket): Anchor {
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
  return { body: square(socket, 0, body, back), bed: square(socket, 0, bed, back + underBack) };
}

/** Outer line of the bone from the component's edge down to the break, on the left; `top` is where the seat ends. */
export function boneLeft(top: number): Run {
  return [
    [-half, top],
    [-half - 0.5, top - 1.2],
    [-14.2, top - 5],
    [-12.3, top - 10],
    [-10.3, top - 15.6],
    [-8.8, top - 21],
    [-7.8, breakLevel],
  ];
}
export const breakLevel = -27;
export const boneBreak: Run = [
  [-7.8, breakLevel],
  [-4, breakLevel - 1.2],
  [0, breakLevel + 0.4],
  [4, breakLevel - 0.8],
  [7.8, breakLevel],
];

/** A left-hand line's twin on the right, running back up. */
export function twin(left: Run): Run {
  return left.map(([x, y]): Point => [-x, y]).toReversed();
}
