import {
  flatBed,
  keel,
  peg,
  type Bone,
  type HoldKind,
  type SeatElement,
} from '../../sims/mechanics/index.ts';
import { fact } from './check.ts';

/** Components of sizes near those drawn in the lessons, to hold against print. */
export const level = -fact('drawn-component-thickness');
export const outline = { kind: 'pear', width: fact('face-lower-width'), height: 35 } as const;

type Stuff = Pick<Bone, 'modulus' | 'poisson'>;

/** mm of bone or foam that give: a teaching value. */
const GIVES = 10;
const PEGS = [
  [0, 9],
  [-5.5, -7],
  [5.5, -7],
] as const;

export function bedOn(bone: Stuff, isRough = false): readonly SeatElement[] {
  return flatBed(outline, { layer: { ...bone, thickness: GIVES }, level, isRough });
}

export function pegsOn(bone: Stuff, kind: HoldKind = 'smooth cemented'): readonly SeatElement[] {
  return PEGS.flatMap(([x, y]) => peg({ x, y, diameter: 5, length: 10, kind, bone, level }));
}

export function keelOn(bone: Stuff): readonly SeatElement[] {
  const size = { x: 0, y: 0, length: 20, height: 11, thickness: 4 };
  return keel({ ...size, kind: 'keel cemented', bone, level });
}

/** A fluted peg in the middle of three cemented ones. */
export function hybridOn(bone: Stuff): readonly SeatElement[] {
  const middle = { x: 0, y: 0, diameter: 7, length: 12, kind: 'fluted press-fit' } as const;
  return [...pegsOn(bone), ...peg({ ...middle, bone, level })];
}
