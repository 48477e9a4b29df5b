import { axisDegrees, halfArcDegrees } from './humerus-front.ts';
import { head } from './means.ts';
import { arcPoints, partFrame, radians, type Point } from './path.ts';

/*
 * A replaced head: ball, neck and stem in the same humerus and the same axes as the natural one.
 * mm from the centre of the ball, x towards the chest, y up. In the ball's own axes u runs out along its axis.
 */
export const onAxis = partFrame([0, 0], axisDegrees);
/** The ball's flat underside, counted from its centre along its axis. */
export const flat = head.radiusFront - head.height;
const bore = flat + 11;

const at = (points: readonly Point[]): readonly Point[] => points.map(onAxis);

/** Round surface from the upper to the lower edge of the ball. */
export const ballSurface = arcPoints(
  [0, 0],
  head.radiusFront,
  axisDegrees + halfArcDegrees,
  axisDegrees - halfArcDegrees,
  21,
);
/** Underside, with the bore that takes the neck. */
const underside = at([
  [flat, -halfFlat()],
  [flat, -6],
  [bore, -5],
  [bore, 5],
  [flat, 6],
  [flat, halfFlat()],
]);
export const ballRuns = [
  ballSurface,
  ...underside.slice(1).map((point, i) => [underside[i] ?? point, point]),
] as const;

/** Half the width of the underside. */
export function halfFlat(): number {
  return Math.sqrt(head.radiusFront ** 2 - flat ** 2);
}

const collar = flat - 0.7;
const neck = at([
  [collar, -6],
  [bore - 1, -5],
  [bore - 1, 5],
  [collar, 6],
]);
const [neckLow, neckHigh] = [onAxis([collar, -8.8]), onAxis([collar, 8.8])];

/** Stem from under the neck on the outer side, round the tip, up the inner side. */
const stem: readonly Point[] = [
  neckHigh,
  [-8.6, 5.4],
  [-13.6, -1.6],
  [-15.8, -11],
  [-15.6, -23],
  [-13.8, -40],
  [-11.9, -60],
  [-10.4, -68],
  [-7, -70.6],
  [-3.6, -68],
  [-2.1, -60],
  [-0.4, -44],
  [2.2, -31],
  [5.6, -20],
  [8.6, -10.6],
  neckLow,
];
export const stemRuns = [
  stem,
  ...[neckLow, ...neck, neckHigh]
    .slice(1)
    .map((point, i) => [[neckLow, ...neck][i] ?? point, point]),
] as const;

export const shaftAxis: readonly [Point, Point] = [
  [-head.offset, 4],
  [-head.offset, -92],
];
/** Where the two axes meet. */
export const axesMeet: Point = [-head.offset, -head.offset];
export const headAxisEnd = onAxis([35, 0]);
/** The angle between the axes, drawn on the inner side. */
export const angleArc = arcPoints(axesMeet, 41, axisDegrees - head.neckShaftAngle, axisDegrees, 17);
export const angleLabel: Point = [
  axesMeet[0] + 41 * Math.cos(radians(-38)),
  axesMeet[1] + 41 * Math.sin(radians(-38)),
];
