import {
  flatBed,
  keel,
  peg,
  sphericalBed,
  type HoldKind,
  type SeatElement,
  type SeatLoad,
} from '../../../sims/mechanics/index.ts';
import type { Hollow } from '../../../sims/physics/rocking-hollow.ts';
import { loadInSpace, type RockingPlane } from '../../../sims/physics/rocking-plane.ts';
import type { RockingReading } from '../../../sims/physics/rocking-reading.ts';
import { createRockingScene, type RockingScene } from '../../../sims/physics/rocking-scene.ts';

/** Seats to rock: an elliptic back of 27 by 36 mm on 6 mm of bone. */
export const bone = { modulus: 210, poisson: 0.3 };
const level = -5;
const outline = { kind: 'ellipse', width: 27, height: 36 } as const;
const layer = { thickness: 6, ...bone };

export function bedOf(bond?: number, isRough?: boolean): readonly SeatElement[] {
  return flatBed(outline, { layer, level, bond, isRough, elements: 300 });
}

export function pegAt(
  [x, y]: readonly [number, number],
  kind: HoldKind = 'smooth cemented',
): readonly SeatElement[] {
  return peg({ x, y, diameter: 6, length: 10, kind, bone, level });
}

export const seats: Readonly<Record<string, readonly SeatElement[]>> = {
  'one peg': [...bedOf(), ...pegAt([0, 0])],
  'one peg, fluted': [...bedOf(), ...pegAt([0, 0], 'fluted press-fit')],
  'two pegs, top and bottom': [...bedOf(), ...pegAt([0, 10]), ...pegAt([0, -10])],
  'two pegs, front and back': [...bedOf(), ...pegAt([8, 0]), ...pegAt([-8, 0])],
  'four pegs': [1, -1].reduce(
    (sum, x) => [...sum, ...pegAt([6 * x, 9]), ...pegAt([6 * x, -9])],
    bedOf(),
  ),
  keel: [
    ...bedOf(),
    ...keel({
      x: 0,
      y: 0,
      length: 20,
      height: 10,
      thickness: 4,
      kind: 'keel cemented',
      bone,
      level,
    }),
  ],
  'slippery bed, nothing on it': bedOf(),
  'rough bed, nothing on it': bedOf(undefined, true),
  'rough bed, two pegs': [...bedOf(undefined, true), ...pegAt([0, 10]), ...pegAt([0, -10])],
  'bonded, one peg': [...bedOf(Infinity), ...pegAt([0, 0])],
  'bond that tears, two pegs': [...bedOf(1.5), ...pegAt([0, 10]), ...pegAt([0, -10])],
  'round back, one peg': [
    ...sphericalBed(outline, 40, { layer, level, elements: 300 }),
    ...pegAt([0, 0]),
  ],
};

export const ballRadius = 24;

/** 27 mm of curvature under a ball of 24, the rim 3 mm inside the edge of the back. */
export function hollowIn(plane: RockingPlane): Hollow {
  const half = (plane === 'top–bottom' ? outline.height : outline.width) / 2 - 3;
  return { curvatureRadius: 27, halfArc: Math.asin(half / 27) };
}

export function sceneOf(
  elements: readonly SeatElement[],
  plane: RockingPlane,
  compressiveLoad: number,
): RockingScene {
  return createRockingScene({
    elements,
    plane,
    hollow: hollowIn(plane),
    ballRadius,
    compressiveLoad,
  });
}

/** Steps until all is at rest or lost. */
export function rest(scene: RockingScene, most = 4000): RockingReading {
  let reading = scene.read();
  for (let i = 0; i < most && (reading.state === 'moving' || reading.isRocking); i += 4) {
    for (let k = 0; k < 4; k++) scene.step();
    reading = scene.read();
  }
  return reading;
}

/** The load that the shape alone asks for at a share of the way to the rim. */
export function idealLoad(plane: RockingPlane, press: number, share: number): SeatLoad {
  const { curvatureRadius, halfArc } = hollowIn(plane);
  const angle = Math.asin(share * Math.sin(halfArc));
  const at = { x: curvatureRadius * Math.sin(angle), z: curvatureRadius * (1 - Math.cos(angle)) };
  return loadInSpace(plane, { x: press * Math.tan(angle), z: -press }, at);
}

/** The load that the ball is measured to put on the socket. */
export function measuredLoad(plane: RockingPlane, { loadOnSocket }: RockingReading): SeatLoad {
  return loadInSpace(plane, loadOnSocket.force, loadOnSocket.at);
}
