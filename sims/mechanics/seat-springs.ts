import { inRange } from '../geometry/numeric.ts';
import type { SeatElement, SeatLoad } from './seat-types.ts';
import type { Vector3 } from './version.ts';

/** Degrees of freedom of a rigid body: three displacements, three turns. */
export const FREEDOMS = 6;

const NONE = 0;
const ELASTIC = 1;
const LIMITED = 2;

/**
 * The interface as numbers in rows: for each element how its gap and its two tangential displacements follow from the
 * body's six coordinates. Turns are measured in mm at the arm `arm`, so that all six are lengths of one size.
 */
export interface Springs {
  readonly count: number;
  readonly arm: number;
  /** Six numbers an element: gap = row · coordinates. */
  readonly gapRows: Float64Array;
  /** Twelve numbers an element: two tangential displacements. Left 0 where nothing stands in their way. */
  readonly sideRows: Float64Array;
  readonly stiffness: Float64Array;
  /** The greatest of these and their sum */
  readonly stiffest: number;
  readonly whole: number;
  readonly sideStiffness: Float64Array;
  readonly kind: Uint8Array;
  readonly strength: Float64Array;
  /** Press at which each yields, N; Infinity where none does */
  readonly crush: Float64Array;
  /** Where each is at home, neither pressed nor open: 0, or below where it has been crushed, mm */
  readonly homes: Float64Array;
}

/**
 * @throws RangeError for a position or normal that is not finite, a normal of no length, a stiffness below 0, or a
 *   `limited` element without a strength
 */
export function springsOf(elements: readonly SeatElement[]): Springs {
  const count = elements.length;
  const arm = elements.reduce((most, { position }) => Math.max(most, Math.hypot(...position)), 1);
  const springs = {
    count,
    arm,
    gapRows: new Float64Array(FREEDOMS * count),
    sideRows: new Float64Array(2 * FREEDOMS * count),
    stiffness: new Float64Array(count),
    stiffest: 0,
    whole: 0,
    sideStiffness: new Float64Array(count),
    kind: new Uint8Array(count),
    strength: new Float64Array(count),
    crush: new Float64Array(count),
    homes: new Float64Array(count),
  };
  elements.forEach((element, i) => {
    const name = `elements[${i}]`;
    const position = finite(`${name}.position`, element.position);
    const normal = unit(`${name}.normal`, element.normal);
    wrench(normal, position, arm, springs.gapRows, FREEDOMS * i);
    const { normalStiffness, tangentialStiffness, tension, strength, crush } = element;
    springs.stiffness[i] = inRange(`${name}.normalStiffness`, normalStiffness, 0, Infinity, 'N/mm');
    springs.sideStiffness[i] = inRange(
      `${name}.tangentialStiffness`,
      tangentialStiffness,
      0,
      Infinity,
      'N/mm',
    );
    if (tangentialStiffness > 0) {
      across(normal).forEach((direction, j) => {
        wrench(direction, position, arm, springs.sideRows, FREEDOMS * (2 * i + j));
      });
    }
    springs.kind[i] = kindOf(name, tension);
    springs.strength[i] =
      tension === 'limited' ? inRange(`${name}.strength`, strength ?? NaN, 0, Infinity, 'N') : 0;
    springs.crush[i] =
      crush === undefined ? Infinity : inRange(`${name}.crush`, crush, 0, Infinity, 'N');
  });
  for (const k of springs.stiffness) {
    springs.stiffest = Math.max(springs.stiffest, k);
    springs.whole += k;
  }
  return springs;
}

/** The load's six parts in the coordinates of the springs. */
export function loadParts({ force, point }: SeatLoad, arm: number): Float64Array {
  const parts = new Float64Array(FREEDOMS);
  wrench(finite('load.force', force), finite('load.point', point), arm, parts, 0);
  return parts;
}

/**
 * Pull of element i, N, at a gap over its home, having slipped already by `slip`; negative where it is pressed.
 */
export function pullAt(springs: Springs, i: number, gap: number, slip: number): number {
  const kind = springs.kind[i];
  if (kind === NONE && gap >= 0) return 0;
  const elastic = (springs.stiffness[i] ?? 0) * gap;
  if (kind !== LIMITED) {
    const least = -(springs.crush[i] ?? Infinity);
    return elastic < least ? least : elastic;
  }
  if (gap < 0) {
    const held = heldAtHome(springs, i, slip);
    return Math.max(-pressAtMost(springs, i, held), held + elastic);
  }
  const strength = springs.strength[i] ?? 0;
  return Math.max(-strength, Math.min(strength, (springs.stiffness[i] ?? 0) * (gap - slip)));
}

/** Pull with which what has slipped resists being pressed home, N, 0 or below. */
function heldAtHome(springs: Springs, i: number, slip: number): number {
  if (springs.kind[i] !== LIMITED) return 0;
  return Math.max(-(springs.stiffness[i] ?? 0) * slip, -(springs.strength[i] ?? 0));
}

/** Its greatest press: that at which it yields, whatever has slipped before. */
function pressAtMost(springs: Springs, i: number, held: number): number {
  return Math.max(springs.crush[i] ?? Infinity, -held);
}

/** How far element i is pressed below its home until it yields, mm. */
export function giveAt(springs: Springs, i: number, slip: number): number {
  const k = springs.stiffness[i] ?? 0;
  if (k === 0 || springs.crush[i] === Infinity) return Infinity;
  const held = heldAtHome(springs, i, slip);
  return (pressAtMost(springs, i, held) + held) / k;
}

/** Its stiffness there, N/mm: 0 where it is open, slips or yields. A gap of exactly 0 counts as closed. */
export function stiffnessAt(springs: Springs, i: number, gap: number, slip: number): number {
  const k = springs.stiffness[i] ?? 0;
  const kind = springs.kind[i];
  if (kind === NONE && gap > 0) return 0;
  if (gap < 0) {
    const held = heldAtHome(springs, i, slip);
    return held + k * gap < -pressAtMost(springs, i, held) ? 0 : k;
  }
  if (kind !== LIMITED) return k;
  return Math.abs(k * (gap - slip)) <= (springs.strength[i] ?? 0) ? k : 0;
}

/**
 * The greatest pull that element i can come to if its gap goes on growing (`rate` above 0) or shrinking without end:
 * ±Infinity where it stiffens against that; its strength, or the press at which it yields, or nothing where it does not.
 */
export function endPull(springs: Springs, i: number, rate: number, slip: number): number {
  if (rate === 0 || springs.stiffness[i] === 0) return 0;
  if (rate < 0) return pullAt(springs, i, -Infinity, slip);
  if (springs.kind[i] === NONE) return 0;
  return springs.kind[i] === ELASTIC ? Infinity : (springs.strength[i] ?? 0);
}

/** Whether element i has its tangential stiffness at every gap. */
export function alwaysGrips(springs: Springs, i: number): boolean {
  return springs.kind[i] !== NONE;
}

export function isLimited(springs: Springs, i: number): boolean {
  return springs.kind[i] === LIMITED;
}

/** Displacement along `direction` of a point of the body, as a row over its six coordinates: (d, p × d / arm). */
function wrench(
  [dx, dy, dz]: Vector3,
  [x, y, z]: Vector3,
  arm: number,
  into: Float64Array,
  row: number,
): void {
  into[row] = dx;
  into[row + 1] = dy;
  into[row + 2] = dz;
  into[row + 3] = (y * dz - z * dy) / arm;
  into[row + 4] = (z * dx - x * dz) / arm;
  into[row + 5] = (x * dy - y * dx) / arm;
}

function finite(name: string, vector: Vector3): Vector3 {
  for (const part of vector) {
    if (!Number.isFinite(part)) {
      throw new RangeError(`${name} is [${vector.join(', ')}]; allowed: three finite numbers`);
    }
  }
  return vector;
}

function unit(name: string, vector: Vector3): Vector3 {
  const size = Math.hypot(...finite(name, vector));
  if (!(size > 0)) {
    throw new RangeError(`${name} is [${vector.join(', ')}]; allowed: a direction, not no length`);
  }
  return [vector[0] / size, vector[1] / size, vector[2] / size];
}

/** Two unit vectors square to a unit vector and to each other. */
function across([x, y, z]: Vector3): readonly [Vector3, Vector3] {
  const first: Vector3 = Math.abs(z) > 0.5 ? [z, 0, -x] : [y, -x, 0];
  const size = Math.hypot(...first);
  const [a, b, c] = [first[0] / size, first[1] / size, first[2] / size];
  return [
    [a, b, c],
    [y * c - z * b, z * a - x * c, x * b - y * a],
  ];
}

function kindOf(name: string, tension: string): number {
  const kind = ['none', 'elastic', 'limited'].indexOf(tension);
  if (kind < 0) {
    throw new RangeError(`${name}.tension is ${tension}; allowed: none, elastic, limited`);
  }
  return kind;
}
