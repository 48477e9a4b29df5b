import { inRange, positive } from '../geometry/numeric.ts';
import { holdOf, type HoldKind } from './seat-kinds.ts';
import type { SeatElement } from './seat-types.ts';

/** The bone round a peg or a keel. */
export interface SurroundingBone {
  /** Young's modulus, MPa, above 0 */
  readonly modulus: number;
  /** Poisson's ratio, 0 to below one half */
  readonly poisson: number;
}

/** A round peg behind the socket, along −z. */
export interface Peg {
  /** Where it stands on the back, mm */
  readonly x: number;
  readonly y: number;
  /** mm, above 0 */
  readonly diameter: number;
  /** mm, above 0 */
  readonly length: number;
  readonly kind: HoldKind;
  readonly bone: SurroundingBone;
  /** z of its root on the back of the socket, mm; 0 where it is left out */
  readonly level?: number | undefined;
}

/** Places along a peg at which the bone bears on its sides. */
const STATIONS = 5;
/** The peg's pull dies away in the bone at this many lengths (1 − ν) from its axis. */
const REACH = 2.5;

/**
 * The elements of a peg: one along its axis, and pairs across it along its length.
 *
 * Along the axis: shear round a stiff shaft, k = 2πGL / ln(r_m / r) with r_m = 2.5 L (1 − ν) (Randolph and Wroth’s shaft
 * of a pile, 1978, from memory), times the grip of its kind; it slips at strength × side area. Across: the bone bears
 * with its modulus for each unit of length, a bed as stiff as it is common for a pile (teaching value).
 *
 * @returns first the axial element, the only one with a strength, then the sides
 * @throws RangeError for sizes that are not above 0, a kind that is none
 */
export function peg({
  x,
  y,
  diameter,
  length,
  kind,
  bone,
  level = 0,
}: Peg): readonly SeatElement[] {
  positive('diameter', diameter, 'mm');
  positive('length', length, 'mm');
  const hold = holdOf(kind);
  const middle = level - length / 2;
  const axial: SeatElement = {
    position: [x, y, middle],
    normal: [0, 0, 1],
    normalStiffness: hold.grip * shaftStiffness(diameter / 2, length, bone),
    tangentialStiffness: 0,
    tension: 'limited',
    strength: hold.strength * Math.PI * diameter * length,
  };
  const sides = Array.from({ length: STATIONS }, (_, i): readonly SeatElement[] => {
    const z = level - ((i + 0.5) * length) / STATIONS;
    const normalStiffness = (bone.modulus * length) / STATIONS;
    const side = { position: [x, y, z], normalStiffness, tangentialStiffness: 0 } as const;
    return [
      { ...side, normal: [1, 0, 0], tension: 'elastic' },
      { ...side, normal: [0, 1, 0], tension: 'elastic' },
    ];
  });
  return [axial, ...sides.flat()];
}

/** Stiffness of a shaft along its axis, N/mm. */
export function shaftStiffness(
  radius: number,
  length: number,
  { modulus, poisson }: SurroundingBone,
): number {
  positive('bone.modulus', modulus, 'MPa');
  inRange('bone.poisson', poisson, 0, 0.499, '');
  const shearModulus = modulus / (2 * (1 + poisson));
  const reach = REACH * length * (1 - poisson);
  // A shaft as thick as its reach is a plate; the form is kept away from its pole.
  const spread = Math.max(1, Math.log(reach / radius));
  return (2 * Math.PI * shearModulus * length) / spread;
}
