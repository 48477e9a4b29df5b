import { bearingName, directionOf } from '../../sims/benches/round-the-rim/bearing.ts';
import { presets, type Preset } from '../../sims/benches/round-the-rim/presets.ts';
import type { RimShape } from '../../sims/benches/round-the-rim/setting.ts';
import { soundShape, type SoundShape } from '../../sims/benches/round-the-rim/sound-shape.ts';
import {
  directionMap,
  peakStabilityRatio,
  rimPoint,
  socketFromDepth,
  sphericalSocket,
  type SphericalSocket,
} from '../../sims/geometry/index.ts';
import { keyOf } from '../../sims/study/prediction.ts';
import { labrumCup } from '../01-ball-and-cup/cups.ts';
import { factValue } from '../fact-value.ts';

const LOOKS = 60;

/** One of the faces of Round the Rim, some of its numbers changed. */
export function faceOf(id: Preset['id'], change: Partial<RimShape> = {}): SoundShape {
  const preset = presets.find((each) => each.id === id);
  if (preset === undefined) throw new RangeError(`id is ${id}; allowed: a preset`);
  return soundShape({ ...preset.shape, ...change });
}

/** Peak ratio of a face at a bearing, degrees from forward toward up. */
export function ratioAt({ face, ballRadius }: SoundShape, bearing: number): number {
  const directions = [directionOf(bearing)];
  const [row] = directionMap(face, ballRadius, { directions, translations: LOOKS });
  if (row === undefined) throw new RangeError('no direction was mapped');
  return row.peakStabilityRatio;
}

/** From the middle of a face to what is left of its rim at a bearing, mm, seen en face; and how high the rim stands there. */
export function rimAt(
  { face }: SoundShape,
  bearing: number,
): { readonly away: number; readonly height: number } {
  const { x, y, z } = rimPoint(face, directionOf(bearing));
  return { away: Math.hypot(x, y), height: z };
}

export const FORWARD = 0;
export const UP = 90;
export const BACK = 180;
export const DOWN = 270;
export const FORWARD_AND_UP = 45;
export const FORWARD_AND_DOWN = 315;

/** The mean bone; the same with one radius both ways; without the front 6 mm; and with its lip. */
export const bone = faceOf('bone');
export const oneRadius = faceOf('bone', { sameRadius: true });
export const worn = faceOf('worn');
export const lipped = faceOf('lip');

/** Eight ways out of a face, beside another face where one is given. */
export interface WayOut {
  readonly bearing: number;
  readonly name: string;
  readonly ratio: number;
  readonly other: number | undefined;
}

export function eightWays(sound: SoundShape, beside?: SoundShape): readonly WayOut[] {
  return Array.from({ length: 8 }, (_, i) => {
    const bearing = i * 45;
    const other = beside === undefined ? undefined : ratioAt(beside, bearing);
    return { bearing, name: bearingName(bearing), ratio: ratioAt(sound, bearing), other };
  });
}

/** The radius of the main section through forward and back, or through up and down, mm. */
export function radiusOf({ input }: SoundShape, bearing: number): number {
  return bearing % BACK === 0 ? input.curvatureRadiusAP : input.curvatureRadiusSI;
}

/** Half arc of a main section toward a bearing, rad: sin β is the way to the rim over the radius. */
export function halfArcOf(sound: SoundShape, bearing: number): number {
  return Math.asin(rimAt(sound, bearing).away / radiusOf(sound, bearing));
}

const ways = [
  { id: 'up', bearing: UP, text: 'Up, over the narrow end of the pear' },
  { id: 'forward', bearing: FORWARD, text: 'Forward, across the pear' },
  {
    id: 'forward-down',
    bearing: FORWARD_AND_DOWN,
    text: 'Forward and down, over the broad corner',
  },
].map((way) => ({ ...way, ratio: ratioAt(bone, way.bearing) }));

/** What a visitor may predict: three ways out, and the easiest of them as it is computed. */
export const wayOptions = ways.map(({ id, text }) => ({ id, text }));
export const easiestWay = keyOf(
  ways.map(({ id, ratio }) => ({ id, value: ratio })),
  Math.min(...ways.map(({ ratio }) => ratio)),
);

/**
 * What a cut leaves of a ratio, by the rim that moves in on a curve of one radius: sin β₁ = sin β₀ (w − cut) / w.
 *
 * @param halfWidth from the middle to the whole rim, mm
 * @param cut mm, from 0 to the half width
 */
export function ratioAfterCut(ratio: number, halfWidth: number, cut: number): number {
  const curvatureRadius = halfWidth / Math.sin(Math.atan(ratio));
  return cut >= halfWidth
    ? 0
    : peakStabilityRatio(sphericalSocket({ curvatureRadius, width: 2 * (halfWidth - cut) }));
}

export const cut = factValue('anterior-defect-width');
const halfWidth = factValue('bony-face-lower-width') / 2;

/** The measured ratio forward, and what the rule leaves of it after the measured cut. */
export const afterCut = ratioAfterCut(factValue('stability-ratio-anterior-intact'), halfWidth, cut);
export const halfWidthOfBone = halfWidth;

/** Forward ratio of the mean bone as its front rim is cut off, mm by mm. */
export const cutRows = Array.from({ length: 17 }, (_, i) => {
  const depth = i / 2;
  const sound = depth === 0 ? bone : faceOf('worn', { defectDepth: depth });
  return { cut: depth, ratio: ratioAt(sound, FORWARD) };
});

/** The labrum's own shape, as measured, taken for rigid. */
export const labrumRatio = peakStabilityRatio(labrumCup);

/** Whole shoulders at their best, and the same with the labrum cut away by the measured share. */
export const measuredWhole = factValue('stability-ratio-intact-greatest');
export const measuredLoss = factValue('stability-loss-without-labrum') / 100;
export const measuredCutAway = measuredWhole * (1 - measuredLoss);
/** Share of the upward ratio that the rigid model loses with its lip. */
export const rigidLoss = 1 - ratioAt(bone, UP) / ratioAt(lipped, UP);

/** The mean bone from top to bottom by its measured depth in place of its measured height. */
const boneRadius = factValue('bony-socket-radius');
const boneDepth = factValue('bony-socket-depth');
export const ratioByDepth = peakStabilityRatio(
  sphericalSocket({
    curvatureRadius: boneRadius,
    width: 2 * Math.sqrt(boneRadius ** 2 - (boneRadius - boneDepth) ** 2),
  }),
);

/** A component, and two wider ones: on the same curve, and at the same depth. Teaching values. */
const narrow = sphericalSocket({ curvatureRadius: 27, width: 26 });
const wider = 30;
export const widths: readonly {
  readonly name: string;
  readonly socket: SphericalSocket;
  readonly ratio: number;
}[] = [
  { name: 'the first', socket: narrow },
  { name: 'wider, same curve', socket: sphericalSocket({ curvatureRadius: 27, width: wider }) },
  {
    name: 'wider, same depth',
    socket: socketFromDepth({ depth: narrow.depth, width: wider }),
  },
].map((each) => ({ ...each, ratio: peakStabilityRatio(each.socket) }));
export const [first, sameCurve, sameDepth] = widths as readonly [
  (typeof widths)[number],
  (typeof widths)[number],
  (typeof widths)[number],
];

/** How much the first component gains on its own curve from a tenth more width. */
export const TENTH = 0.1;
export const gainOfTenth =
  peakStabilityRatio(
    sphericalSocket({
      curvatureRadius: narrow.curvatureRadius,
      width: (1 + TENTH) * narrow.width,
    }),
  ) /
    first.ratio -
  1;
