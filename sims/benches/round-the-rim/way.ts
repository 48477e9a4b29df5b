import {
  directionMap,
  pathOverFace,
  type BallPathRow,
  type DirectionRow,
} from '../../geometry/index.ts';
import type { Range } from '../../shared/range.ts';
import { directionOf } from './bearing.ts';
import { seatOn, type Seat } from './seat.ts';
import type { SoundShape } from './sound-shape.ts';

/** Directions of the map: one every 5°. */
export const DIRECTIONS = 72;
/** Places looked at on the way out in each; what happens between them is solved for. */
export const LOOKS = 60;
/** Directions while a control is being turned: one every 15°, so that the drawing keeps up with the hand. */
export const FEWER_DIRECTIONS = 24;
const ROWS_A_SIDE = 56;
/** Ratios this near are the same. */
const TIE = 5e-4;

/** Every direction of a face, and the two that stand out. */
export interface RimMap {
  readonly rows: readonly DirectionRow[];
  readonly weakest: readonly DirectionRow[];
  readonly strongest: readonly DirectionRow[];
}

/** The way out in the chosen direction, and the opposite one. */
export interface Way {
  readonly bearing: number;
  readonly direction: number;
  readonly here: DirectionRow;
  readonly opposite: DirectionRow;
  /** From the middle to dislocation. */
  readonly out: readonly BallPathRow[];
  /** The same on the opposite side, translations negative, from dislocation to the middle. */
  readonly back: readonly BallPathRow[];
}

/** The ball at one place of its way. */
export interface BallPlace extends BallPathRow {
  readonly seat: Seat;
}

/** @param directions how many, a multiple of four */
export function mapOf(sound: SoundShape, directions = DIRECTIONS): RimMap {
  const rows = roundRows(sound, directions);
  const ratios = rows.map((row) => row.peakStabilityRatio);
  const least = Math.min(...ratios);
  const greatest = Math.max(...ratios);
  return {
    rows,
    weakest: rows.filter((row) => row.peakStabilityRatio <= least + TIE),
    strongest: rows.filter((row) => row.peakStabilityRatio >= greatest - TIE),
  };
}

/** All directions; of a face without a defect, which is the same in front as behind, one half is the other's mirror. */
function roundRows({ face, ballRadius }: SoundShape, directions: number): readonly DirectionRow[] {
  const step = (2 * Math.PI) / directions;
  const isEven = face.defect === undefined;
  const from = isEven ? -directions / 4 : 0;
  const count = isEven ? directions / 2 + 1 : directions;
  const computed = directionMap(face, ballRadius, {
    directions: Array.from({ length: count }, (_, i) => (from + i) * step),
    translations: LOOKS,
  });
  return Array.from({ length: directions }, (_, i) => {
    const place = i - from;
    const row = computed[place < count ? place : fold(place, count)];
    if (row === undefined) throw new RangeError('a direction was not mapped');
    return { ...row, direction: i * step };
  });
}

/** From straight up on over the back: the place in front at the same height; past straight down, that place itself. */
function fold(place: number, count: number): number {
  const mirrored = 2 * (count - 1) - place;
  return mirrored >= 0 ? mirrored : -mirrored;
}

export function wayIn({ face, ballRadius }: SoundShape, bearing: number): Way {
  const direction = directionOf(bearing);
  const [here, opposite] = directionMap(face, ballRadius, {
    directions: [direction, direction + Math.PI],
    translations: LOOKS,
  });
  if (here === undefined || opposite === undefined) throw new RangeError('no direction was mapped');
  const side = (toward: number, row: DirectionRow): readonly BallPathRow[] =>
    pathOverFace(face, ballRadius, toward, sideOf(row));
  return {
    bearing,
    direction,
    here,
    opposite,
    out: side(direction, here),
    back: side(direction + Math.PI, opposite)
      .map((row) => ({ ...row, translation: -row.translation }))
      .reverse(),
  };
}

/** Translations from the middle to dislocation, the place where the rim is met among them. */
function sideOf(row: DirectionRow): readonly number[] {
  const { dislocationTranslation } = row;
  const even = Array.from(
    { length: ROWS_A_SIDE + 1 },
    (_, i) => (dislocationTranslation * i) / ROWS_A_SIDE,
  );
  return [...even, playOf(row)].sort((a, b) => a - b);
}

/** How far the ball's centre moves before it meets the rim, mm; not beyond dislocation. */
export function playOf({ rimContactTranslation, dislocationTranslation }: DirectionRow): number {
  return Math.min(rimContactTranslation, dislocationTranslation);
}

const STEP = 0.05;

/** Where the ball's centre may stand on a way, mm: to dislocation on either side, in steps from the middle. */
export function translationRange({ here, opposite }: Way): Range {
  const last = (row: DirectionRow): number =>
    Number((Math.floor(row.dislocationTranslation / STEP + 1e-6) * STEP).toFixed(2));
  return { min: -last(opposite), max: last(here), step: STEP, digits: 2, unit: 'mm' };
}

/** Brings a translation onto the way. */
export function heldOn(way: Way, translation: number): number {
  const { min, max } = translationRange(way);
  return Math.max(min, Math.min(max, translation));
}

export function placeOn({ face, ballRadius }: SoundShape, way: Way, asked: number): BallPlace {
  const translation = heldOn(way, asked);
  const [row] = pathOverFace(face, ballRadius, way.direction, [translation]);
  if (row === undefined) throw new RangeError('no place was computed');
  return { ...row, seat: seatOn(face, ballRadius, way.direction, translation) };
}
