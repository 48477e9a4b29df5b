import { positive } from '../geometry/numeric.ts';
import { holdOf, type HoldKind } from './seat-kinds.ts';
import { crushIn, shaftStiffness, type SurroundingBone } from './seat-peg.ts';
import type { SeatElement } from './seat-types.ts';

/** A keel behind the socket: a plate that stands along y and goes in along −z. */
export interface Keel {
  /** Middle of its root on the back, mm */
  readonly x: number;
  readonly y: number;
  /** Along y, mm, above 0 */
  readonly length: number;
  /** Along z, mm, above 0 */
  readonly height: number;
  /** Along x, mm, above 0 */
  readonly thickness: number;
  readonly kind: HoldKind;
  readonly bone: SurroundingBone;
  /** z of its root on the back of the socket, mm; 0 where it is left out */
  readonly level?: number | undefined;
}

const ALONG = 8;
const DEEP = 6;

/**
 * The elements of a keel: its grip along −z in places along its length, its two broad faces and its two ends, each of
 * which the bone can only press.
 *
 * The grip is that of a shaft of the same side area: stiffness and strength as for a peg, spread along the length. A face
 * bears with the bone's modulus for each unit of depth, shared over its length (teaching value, as for a peg). Bone with a
 * strength yields where a face or an end is pressed by it, and under the edge once the grips slip as well.
 *
 * @returns first the grips, the only elements with a strength, then faces and ends
 * @throws RangeError for sizes that are not above 0, a kind that is none
 */
export function keel(question: Keel): readonly SeatElement[] {
  const { x, y, length, height, thickness, kind, bone, level = 0 } = question;
  positive('length', length, 'mm');
  positive('height', height, 'mm');
  positive('thickness', thickness, 'mm');
  const hold = holdOf(kind);
  const around = 2 * (length + thickness);
  const stiffness = hold.grip * shaftStiffness(around / (2 * Math.PI), height, bone);
  const strength = hold.strength * around * height;
  const crushOf = crushIn(bone);
  const { crush: edge } = crushOf(length * thickness);
  const grips = places(length, ALONG).map((along): SeatElement => ({
    position: [x, y + along, level - height / 2],
    normal: [0, 0, 1],
    normalStiffness: stiffness / ALONG,
    tangentialStiffness: 0,
    tension: 'limited',
    strength: strength / ALONG,
    ...(edge === undefined ? {} : { crush: (strength + edge) / ALONG }),
  }));
  const depths = places(height, DEEP).map((deep) => level - height / 2 + deep);
  const bearing = { tangentialStiffness: 0, tension: 'none' } as const;
  const slice = (bone.modulus * height) / DEEP;
  const faces = depths.flatMap((z) =>
    places(length, ALONG).flatMap((along) =>
      [1, -1].map((side): SeatElement => ({
        ...bearing,
        position: [x + (side * thickness) / 2, y + along, z],
        normal: [-side, 0, 0],
        normalStiffness: slice / ALONG,
        ...crushOf((length * height) / ALONG / DEEP),
      })),
    ),
  );
  const ends = depths.flatMap((z) =>
    [1, -1].map((side): SeatElement => ({
      ...bearing,
      position: [x, y + (side * length) / 2, z],
      normal: [0, -side, 0],
      normalStiffness: slice,
      ...crushOf((thickness * height) / DEEP),
    })),
  );
  return [...grips, ...faces, ...ends];
}

/** Middles of `count` equal parts of a length that is centred on 0. */
function places(length: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => ((i + 0.5) / count - 0.5) * length);
}
