import type { HoldKind } from '../../sims/mechanics/index.ts';
import { kindRows, newKeel, newPeg, plate } from './seats.ts';

/** How a kind of hold is drawn in section, mm from the middle of its root, to the side and up. */
export interface HoldPicture {
  readonly kind: HoldKind;
  readonly name: readonly [string, string];
  readonly words: string;
  readonly outline: readonly (readonly [x: number, z: number])[];
  readonly width: number;
  readonly depth: number;
  /** Of cement, and of bone that has grown into pores; 0 where there is none */
  readonly mantle: number;
  readonly sleeve: number;
  readonly isMetal: boolean;
  /** N */
  readonly pullOut: number;
}

type Outline = HoldPicture['outline'];
const { diameter, length } = newPeg;

/** Both sides from one: from the root down to the foot, then up the other. */
const mirrored = (side: Outline): Outline => [
  ...side,
  ...[...side].reverse().map(([x, z]) => [-x, z] as const),
];
const smooth = (half: number, depth: number): Outline =>
  mirrored([
    [half, 0],
    [half, -depth],
  ]);

/** Ribs on a shaft, each `high` and `apart` from the next, that stand out from `core` to `rim`. */
function ribbed(core: number, rim: number, apart: number, high: number, lean: number): Outline {
  const ribs = Array.from({ length: Math.floor((length - 1) / apart) }, (_, i) => {
    const z = -1 - i * apart;
    return [
      [core, z],
      [rim, z - lean],
      [rim, z - lean - high],
      [core, z - high - 2 * lean],
    ] as const;
  });
  return mirrored([[core, 0], ...ribs.flat(), [core, -length]]);
}

const half = diameter / 2;
/** Of the pegs, all of one size; and the mantle of those in cement. */
const plain = { width: diameter, depth: length, mantle: 0, sleeve: 0, isMetal: false };
const CEMENT = 0.7;
const drawn: Readonly<Record<HoldKind, Omit<HoldPicture, 'kind' | 'pullOut'>>> = {
  'smooth cemented': {
    ...plain,
    name: ['smooth,', 'cemented'],
    words: 'a plain plastic peg in a mantle of cement.',
    outline: smooth(half, length),
    mantle: CEMENT,
  },
  'textured cemented': {
    ...plain,
    name: ['textured,', 'cemented'],
    words: 'a plastic peg with grooves, which the cement fills.',
    outline: ribbed(half - 0.7, half, 2.2, 1, 0.15),
    mantle: CEMENT,
  },
  'fluted press-fit': {
    ...plain,
    name: ['fluted,', 'press-fit'],
    words: 'a plastic peg with thin flutes, pressed into bone without cement.',
    outline: ribbed(half - 1.1, half + 0.4, 1.9, 0.35, 0.1),
  },
  'in-grown': {
    ...plain,
    name: ['grown', 'in'],
    words: 'a peg with a porous surface, into which bone has grown.',
    outline: smooth(half - 0.6, length),
    sleeve: 0.6,
  },
  'metal-backed screw-fixed': {
    ...plain,
    name: ['metal-backed,', 'screwed'],
    words: 'a screw through a metal plate, with plastic on the plate.',
    outline: ribbed(half - 0.7, half + 0.2, 1.3, 0.15, 0.3),
    isMetal: true,
  },
  'keel cemented': {
    ...plain,
    name: ['keel, end on,', 'cemented'],
    words: 'a plate that stands upright in cement, here seen along its edge.',
    outline: smooth(newKeel.thickness / 2, newKeel.depth),
    width: newKeel.thickness,
    depth: newKeel.depth,
    mantle: CEMENT,
  },
};

export const holdPictures: readonly HoldPicture[] = [
  ...kindRows.map(({ kind, pullOut }) => ({ kind, ...drawn[kind], pullOut })),
  { kind: 'keel cemented', ...drawn['keel cemented'], pullOut: plate.pullOut },
];
