import { axisDegrees, halfArcDegrees } from './humerus-front.ts';
import { head } from './means.ts';
import { arcPoints, partFrame, type Point } from './path.ts';

/*
 * A replaced head: ball, neck and stem in the same humerus and the same axes as the natural one.
 * mm from the centre of the ball, x towards the chest, y up. In the ball's own axes u runs out along its axis.
 */
export const onAxis = partFrame([0, 0], axisDegrees);
export const neckPlane = head.radiusFront - head.height;
const taperDepth = 9;

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
  [-neckPlane, -ballHalf() + 0.2],
  [-neckPlane, -5.6],
  [-neckPlane + taperDepth, -4.9],
  [-neckPlane + taperDepth, 4.9],
  [-neckPlane, 5.6],
  [-neckPlane, ballHalf() - 0.2],
]);
export const ballRuns = [
  ballSurface,
  ...underside.slice(1).map((point, i) => [underside[i] ?? point, point]),
] as const;

function ballHalf(): number {
  return Math.sqrt(head.radiusFront ** 2 - neckPlane ** 2);
}

const neck = at([
  [-neckPlane - 4, -6.6],
  [-neckPlane - 1.4, -5.9],
  [-neckPlane + taperDepth - 1, -5],
  [-neckPlane + taperDepth - 1, 5],
  [-neckPlane - 1.4, 5.9],
  [-neckPlane - 4, 6.6],
]);
const [neckLow, neckHigh] = [onAxis([-neckPlane - 4, -8.4]), onAxis([-neckPlane - 4, 8.4])];

/** Stem from under the neck on the outer side, round the tip, up the inner side. */
const stem: readonly Point[] = [
  neckHigh,
  [-16.2, -3.4],
  [-17, -13],
  [-15.4, -26],
  [-13.4, -42],
  [-11.9, -60],
  [-10.4, -68],
  [-7, -70.6],
  [-3.6, -68],
  [-2.1, -60],
  [-0.8, -42],
  [1.8, -27],
  [4, -18],
  neckLow,
];
export const stemRuns = [
  stem,
  ...[neckLow, ...neck, neckHigh].slice(1).map((point, i) => [[neckLow, ...neck][i] ?? point, point]),
] as const;

export const shaftAxis: readonly [Point, Point] = [
  [-head.offset, 4],
  [-head.offset, -92],
];
/** Where the two axes meet. */
export const axesMeet: Point = [-head.offset, -head.offset];
export const headAxisEnd = onAxis([33, 0]);
/** The angle between the axes, drawn on the inner side. */
export const angleArc = arcPoints(axesMeet, 40, axisDegrees - head.neckShaftAngle, axisDegrees, 17);
