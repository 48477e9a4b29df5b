import type { HoldKind } from '../../mechanics/index.ts';
import type { Range } from '../../shared/range.ts';

/** What the bone under the back can do: press; press and hold against sliding while it does; or pull as well. */
export type BedKind = 'pressed' | 'rough' | 'bonded';

/** The shape of the back: a plane, or part of a sphere that bulges into the bone. */
export type BackKind = 'flat' | 'round';

/** A round peg on the back, mm; x to the front, y up. */
export interface PegPlace {
  readonly kind: HoldKind;
  readonly x: number;
  readonly y: number;
  readonly diameter: number;
  readonly length: number;
}

/** A keel on the back, upright, mm: `span` along y, `depth` into the bone. */
export interface KeelPlace {
  readonly kind: HoldKind;
  readonly x: number;
  readonly y: number;
  readonly span: number;
  readonly depth: number;
  readonly thickness: number;
}

/** What stands on the back. */
export interface Design {
  readonly pegs: readonly PegPlace[];
  readonly keel: KeelPlace | null;
}

/** The back itself, and the bone it stands on. */
export interface Ground {
  /** mm */
  readonly height: number;
  readonly width: number;
  readonly back: BackKind;
  /** Of a round back, mm; kept while it is flat */
  readonly backRadius: number;
  /** Young’s modulus of the bone, MPa */
  readonly modulus: number;
  /** Of bone that gives, mm */
  readonly layer: number;
  readonly bed: BedKind;
}

/** How the ball presses. */
export interface BallLoad {
  /** N, toward the bone */
  readonly press: number;
  /** N, along the face, away from its middle */
  readonly shear: number;
  /** Whole degrees from the front toward the top */
  readonly bearing: number;
  /** Per cent of the way from the middle to the rim of the face */
  readonly share: number;
}

export interface BoardSetting {
  readonly design: Design;
  readonly ground: Ground;
  readonly load: BallLoad;
}

export type GroundField = Exclude<keyof Ground, 'bed' | 'back'>;
export type PegField = Exclude<keyof PegPlace, 'kind'>;
export type KeelField = Exclude<keyof KeelPlace, 'kind'>;

export const groundRanges: Readonly<Record<GroundField, Range>> = {
  height: { min: 30, max: 44, step: 1, digits: 0, unit: 'mm' },
  width: { min: 22, max: 34, step: 1, digits: 0, unit: 'mm' },
  backRadius: { min: 30, max: 80, step: 1, digits: 0, unit: 'mm' },
  modulus: { min: 50, max: 500, step: 1, digits: 0, unit: 'MPa' },
  layer: { min: 3, max: 15, step: 0.5, digits: 1, unit: 'mm' },
};

export const loadRanges: Readonly<Record<keyof BallLoad, Range>> = {
  press: { min: 50, max: 1500, step: 10, digits: 0, unit: 'N' },
  shear: { min: 0, max: 600, step: 10, digits: 0, unit: 'N' },
  bearing: { min: 0, max: 359, step: 1, digits: 0, unit: '°' },
  share: { min: 0, max: 100, step: 1, digits: 0, unit: '%' },
};

const place: Range = { min: -22, max: 22, step: 0.1, digits: 1, unit: 'mm' };
const depth: Range = { min: 4, max: 16, step: 0.5, digits: 1, unit: 'mm' };

export const pegRanges: Readonly<Record<PegField, Range>> = {
  x: place,
  y: place,
  diameter: { min: 3, max: 9, step: 0.5, digits: 1, unit: 'mm' },
  length: depth,
};

export const keelRanges: Readonly<Record<KeelField, Range>> = {
  x: place,
  y: place,
  span: { min: 8, max: 28, step: 0.5, digits: 1, unit: 'mm' },
  depth,
  thickness: { min: 2, max: 6, step: 0.5, digits: 1, unit: 'mm' },
};

export const MOST_PEGS = 7;

/** Kinds of hold for a peg and for a keel; a letter stands for each in a link. */
export const pegKinds: readonly HoldKind[] = [
  'smooth cemented',
  'textured cemented',
  'fluted press-fit',
  'in-grown',
  'metal-backed screw-fixed',
];
export const keelKinds: readonly HoldKind[] = ['keel cemented', 'textured cemented', 'in-grown'];

const smooth = { kind: 'smooth cemented', diameter: 5, length: 10 } as const;

export const newPeg = smooth;
export const newKeel: KeelPlace = {
  kind: 'keel cemented',
  x: 0,
  y: -1,
  span: 18,
  depth: 10,
  thickness: 4,
};

export const triangle: Design = {
  pegs: [
    { ...smooth, x: 0, y: 9 },
    { ...smooth, x: 4, y: -7 },
    { ...smooth, x: -4, y: -7 },
  ],
  keel: null,
};

/** The bone’s modulus and the press are facts told elsewhere in the course; what is not is a teaching value. */
export const defaultBoard: BoardSetting = {
  design: triangle,
  ground: {
    height: 36,
    width: 27,
    back: 'flat',
    backRadius: 36,
    modulus: 326,
    layer: 6,
    bed: 'pressed',
  },
  load: { press: 750, shear: 200, bearing: 30, share: 90 },
};
