import type { SphericalSocket } from '../../geometry/index.ts';
import { keel, pegAt, postFlank, square, underside } from './component-anchors.ts';
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
const { thickness: back, cementBed, tray } = component;

/** The section of a component that holds on in the given way. */
export function componentSection(socket: SphericalSocket, fixation: Fixation): ComponentSection {
  if (fixation === 'metal-backed') return metalBacked(socket);
  const anchors = fixation === 'pegs' ? [pegAt(socket, -5.6), pegAt(socket, 5.6)] : [keel(socket)];
  const around = anchors.map((anchor) => anchor.bed);
  return {
    plastic: [
      rimToRim(socket),
      side(socket, 1, back),
      ...underside(
        socket,
        anchors.map(({ body }) => body),
        back,
      ),
      side(socket, -1, back),
    ],
    cement: [
      surfacePoints(socket, -half, half, back),
      edge(socket, 1, back, back + cementBed),
      ...underside(socket, around, back + cementBed),
      edge(socket, -1, back + cementBed, back),
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
