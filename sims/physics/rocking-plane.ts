import type { SeatElement, SeatLoad, Tension } from '../mechanics/index.ts';
import type { Vector } from './vector.ts';

/** The plane looked at: front–back holds x, top–bottom y; both hold z. */
export type RockingPlane = 'front–back' | 'top–bottom';

/** A force in the plane at a place in it, as the solver in three dimensions takes it. */
export function loadInSpace(plane: RockingPlane, force: Vector, at: Vector): SeatLoad {
  return plane === 'top–bottom'
    ? { force: [0, force.x, force.z], point: [0, at.x, at.z] }
    : { force: [force.x, 0, force.z], point: [at.x, 0, at.z] };
}

/** An interface spring as the plane sees it. */
export interface PlaneSpring {
  /** mm, x along the plane's direction */
  readonly at: Vector;
  /** The part of the spring's unit normal that lies in the plane: shorter than 1 where a round back turns away. */
  readonly normal: Vector;
  /** N/mm */
  readonly stiffness: number;
  readonly sideStiffness: number;
  readonly tension: Tension;
  /** N; 0 for a spring that is not `limited` */
  readonly strength: number;
  /** Press at which what stands behind it yields, N; Infinity where it bears any */
  readonly crush: number;
}

/** A list of elements as springs of one plane. */
export interface PlaneSprings {
  readonly springs: readonly PlaneSpring[];
  /** For each element the spring it went into (−1: it has no part in the plane), and its share of that spring. */
  readonly springOf: readonly number[];
  readonly shareOf: readonly number[];
}

/** Coordinates in mm and parts of a normal closer than this are the same. */
const SAME = 1e6;
/** How far the middle of the stiffness may lie out of the plane, as a share of the reach. */
const OFF_PLANE = 1e-6;

/**
 * The springs of a plane: all elements that move alike when the socket moves in the plane are one spring, a strip of the
 * face from edge to edge. Nothing is lost by this: for a seat that is the same on both sides of the plane, under a load
 * in the plane, the springs answer as the elements do.
 *
 * @throws RangeError for elements that are not balanced about the plane: they would turn the socket out of it
 */
export function planeSprings(elements: readonly SeatElement[], plane: RockingPlane): PlaneSprings {
  const along = plane === 'front–back' ? 0 : 1;
  requireBalance(elements, along === 0 ? 1 : 0, plane);
  const places = new Map<string, number>();
  const sums: PlaneSpring[] = [];
  const springOf = elements.map((element) => {
    const spring = inPlane(element, along);
    const { at, normal, stiffness, strength, crush, tension } = spring;
    const isBearing = stiffness > 0 && Math.abs(normal.x) + Math.abs(normal.z) > 0;
    if (!isBearing && spring.sideStiffness === 0) return -1;
    const alike = [at.x, at.z, normal.x, normal.z, strength / stiffness, crush / stiffness];
    const key = [tension, ...alike.map((value) => Math.round(value * SAME))].join(' ');
    const place = places.get(key) ?? sums.length;
    places.set(key, place);
    sums[place] = together(sums[place], spring);
    return place;
  });
  const shareOf = elements.map(({ normalStiffness }, i) => {
    const whole = sums[springOf[i] ?? -1]?.stiffness ?? 0;
    return whole > 0 ? normalStiffness / whole : 0;
  });
  return { springs: sums, springOf, shareOf };
}

function inPlane(element: SeatElement, along: 0 | 1): PlaneSpring {
  const { position, normal, normalStiffness, tangentialStiffness, tension } = element;
  const { strength, crush = Infinity } = element;
  const size = Math.hypot(...normal);
  return {
    at: { x: position[along], z: position[2] },
    normal: { x: normal[along] / size, z: normal[2] / size },
    stiffness: normalStiffness,
    sideStiffness: tangentialStiffness,
    tension,
    strength: tension === 'limited' ? (strength ?? 0) : 0,
    crush,
  };
}

function together(sum: PlaneSpring | undefined, spring: PlaneSpring): PlaneSpring {
  if (sum === undefined) return spring;
  return {
    ...sum,
    stiffness: sum.stiffness + spring.stiffness,
    sideStiffness: sum.sideStiffness + spring.sideStiffness,
    strength: sum.strength + spring.strength,
    crush: sum.crush + spring.crush,
  };
}

function requireBalance(elements: readonly SeatElement[], across: 0 | 1, plane: string): void {
  let [turning, whole, reach] = [0, 0, 1];
  for (const { position, normal, normalStiffness } of elements) {
    const bearing = normalStiffness * normal[2] ** 2;
    turning += bearing * position[across];
    whole += bearing;
    reach = Math.max(reach, Math.abs(position[across]));
  }
  if (Math.abs(turning) <= OFF_PLANE * whole * reach) return;
  const off = (turning / whole).toFixed(2);
  throw new RangeError(
    `elements have their middle ${off} mm out of the ${plane} plane; allowed: elements that are alike on both its sides`,
  );
}
