import { head } from './means.ts';
import { arcPoints, type Point } from './path.ts';
import { inset } from './pen.ts';

/*
 * Upper humerus of the right arm, cut in the plane of the scapula and seen from the front.
 * mm from the centre of the head, x towards the chest, y up.
 */

/** Direction of the head's axis: up and inwards, set by the angle to a shaft that hangs straight down. */
export const axisDegrees = head.neckShaftAngle - 90;

/** Half the arc of the joint surface, from the head's height over the plane of the neck. */
export const halfArcDegrees =
  (Math.acos((head.radiusFront - head.height) / head.radiusFront) * 180) / Math.PI;

export const cartilageThickness = 1.5;
/** Where the drawing breaks the shaft off. */
export const shaftEnd = -80;

const from = axisDegrees + halfArcDegrees;
const to = axisDegrees - halfArcDegrees;

/** The surface the joint runs on. */
export const jointSurface = arcPoints([0, 0], head.radiusFront, from, to, 17);

/** The bone under it: cartilage is thickest on top and runs out at the neck. */
export const boneUnderCartilage: readonly Point[] = jointSurface.map(([x, y], i) => {
  const shrink = 1 - (cartilageThickness / head.radiusFront) * Math.sin((Math.PI * i) / 16) ** 0.6;
  return [x * shrink, y * shrink];
});

const neckTop = arcPoints([0, 0], head.radiusFront, from, from, 2)[0] ?? [0, 0];
const neckBottom = arcPoints([0, 0], head.radiusFront, to, to, 2)[0] ?? [0, 0];

/** Inner side, from the head down to the break. */
const calcar: readonly Point[] = [
  neckBottom,
  [16.6, -15.9],
  [13, -19.4],
  [10.2, -23.8],
  [7.8, -30],
  [6.2, -38],
  [5.3, -50],
  [5, -64],
  [4.8, shaftEnd],
];

/** Outer side, from the break up over the greater tuberosity to the neck. */
const outerSide: readonly Point[] = [
  [-19, shaftEnd],
  [-19.2, -64],
  [-19.8, -50],
  [-21, -38],
  [-24, -24],
  [-27.6, -11],
  [-29.4, 0],
  [-29, 8],
  [-27, 13],
  [-24, 16.2],
  [-20, 17.4],
  [-16.6, 17.4],
  [-14.6, 18.4],
  neckTop,
];

export const jaggedEnd: readonly Point[] = [
  [4.8, shaftEnd],
  [1, shaftEnd - 1.8],
  [-3, shaftEnd - 0.6],
  [-8, shaftEnd + 1.8],
  [-13, shaftEnd + 1.4],
  [-17, shaftEnd - 0.8],
  [-19, shaftEnd],
];

export const humerusRuns = [boneUnderCartilage, calcar, jaggedEnd, outerSide] as const;
/** What is inked heavily, from break to break. */
export const humerusEdge = [outerSide, boneUnderCartilage, calcar] as const;

/** Inside of the shell: thin round the head, up to a fifth of the shaft's width below, open at the break. */
const shellInside: readonly Point[] = inset(
  [...boneUnderCartilage, ...calcar.slice(1), ...outerSide.slice(0, -1)],
  ([, y]) => shell(y),
).map(([x, y]): Point => (y < shaftEnd + 4 ? [x, shaftEnd] : [x, y]));
const innerSide = boneUnderCartilage.length + calcar.length - 1;
export const marrowRuns = [
  shellInside.slice(0, innerSide),
  [
    shellInside[innerSide - 1] ?? neckBottom,
    [-3, shaftEnd - 0.6],
    [-8, shaftEnd + 1.8],
    shellInside[innerSide] ?? neckTop,
  ],
  [...shellInside.slice(innerSide), shellInside[0] ?? neckTop],
] as const;

function shell(y: number): number {
  return y > -18 ? 0.9 : Math.min(4.4, 0.9 + ((-18 - y) / 40) * 3.5);
}

/** The same bone with its head sawn off at the neck, to take a stem. */
export const sawnRuns = [[neckTop, neckBottom], calcar, jaggedEnd, outerSide] as const;
export const sawnEdge = [outerSide, [neckTop, neckBottom], calcar] as const;
const sawnInside: readonly Point[] = inset([...calcar, ...outerSide], ([, y]) => shell(y)).map(
  ([x, y]): Point => (y < shaftEnd + 4 ? [x, shaftEnd] : [x, y]),
);
export const sawnMarrow = [
  [sawnInside.at(-1) ?? neckTop, sawnInside[0] ?? neckBottom],
  sawnInside.slice(0, calcar.length),
  [
    sawnInside[calcar.length - 1] ?? neckBottom,
    [-3, shaftEnd - 0.6],
    [-8, shaftEnd + 1.8],
    sawnInside[calcar.length] ?? neckTop,
  ],
  sawnInside.slice(calcar.length),
] as const;
