import { inRange, positive } from '../geometry/numeric.ts';
import { holdOf, type HoldKind } from './seat-kinds.ts';
import type { SeatElement } from './seat-types.ts';
import type { Vector3 } from './version.ts';

/** The bone round a peg or a keel. */
export interface SurroundingBone {
  /** Young's modulus, MPa, above 0 */
  readonly modulus: number;
  /** Poisson's ratio, 0 to below one half */
  readonly poisson: number;
  /** Press at which it yields, MPa, above 0; it bears any where this is left out */
  readonly strength?: number | undefined;
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
 * Bone with a strength yields: beside the peg where it is pressed by the strength on the width of the peg, and under it
 * where the tip’s area is pressed so and the sides slip as well. Then the bone on each side is an element of its own that
 * can only press, so that a crushed hole stays wide.
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
  const slips = hold.strength * Math.PI * diameter * length;
  const crushOf = crushIn(bone);
  const tip = crushOf((Math.PI * diameter ** 2) / 4);
  const middle = level - length / 2;
  const axial: SeatElement = {
    position: [x, y, middle],
    normal: [0, 0, 1],
    normalStiffness: hold.grip * shaftStiffness(diameter / 2, length, bone),
    tangentialStiffness: 0,
    tension: 'limited',
    strength: slips,
    ...(tip.crush === undefined ? {} : { crush: slips + tip.crush }),
  };
  const sides = Array.from({ length: STATIONS }, (_, i): readonly SeatElement[] => {
    const z = level - ((i + 0.5) * length) / STATIONS;
    const normalStiffness = (bone.modulus * length) / STATIONS;
    const side = { position: [x, y, z], normalStiffness, tangentialStiffness: 0 } as const;
    const yielding = crushOf((diameter * length) / STATIONS);
    if (yielding.crush !== undefined) {
      const ways = [1, -1].flatMap((way): Vector3[] => [
        [way, 0, 0],
        [0, way, 0],
      ]);
      return ways.map((normal) => ({ ...side, ...yielding, normal, tension: 'none' }));
    }
    return [
      { ...side, normal: [1, 0, 0], tension: 'elastic' },
      { ...side, normal: [0, 1, 0], tension: 'elastic' },
    ];
  });
  return [axial, ...sides.flat()];
}

/** The press, N, at which bone yields on an area, mm², as a part of an element; no part for bone that bears any. */
export function crushIn({
  strength,
}: SurroundingBone): (area: number) => { readonly crush?: number } {
  if (strength === undefined) return () => ({});
  positive('bone.strength', strength, 'MPa');
  return (area) => ({ crush: strength * area });
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
