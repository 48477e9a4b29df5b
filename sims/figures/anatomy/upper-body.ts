import type { Point } from './path.ts';

/*
 * A standing person from the front, head to waist; mm, x to the viewer's right from the middle, y up from the level
 * of the bony shoulder tips. A grown person of middle height, about 1.7 m. Teaching values.
 */
type Line = readonly Point[];

const mirrored = (line: Line): Line => line.map(([x, y]): Point => [-x, y]);

const halfHead: Line = [
  [0, 304],
  [28, 300],
  [52, 286],
  [69, 262],
  [76, 230],
  [76, 200],
  [72, 168],
  [64, 136],
  [51, 108],
  [33, 90],
  [16, 82],
  [0, 80],
];
export const headOutline: Line = [
  ...halfHead.slice(0, -1),
  ...mirrored(halfHead).toReversed().slice(0, -1),
];

const ear: Line = [
  [75, 214],
  [83, 219],
  [86, 204],
  [82, 184],
  [77, 170],
  [72, 168],
];
export const ears: readonly Line[] = [ear, mirrored(ear)];

/** From under the jaw over neck, shoulder and arm to the forearm. */
const flank: Line = [
  [53, 112],
  [51, 84],
  [55, 56],
  [72, 34],
  [104, 20],
  [142, 12],
  [174, 4],
  [200, -12],
  [217, -40],
  [227, -80],
  [230, -125],
  [230, -175],
  [233, -225],
  [239, -275],
  [246, -325],
  [251, -375],
  [254, -430],
];
/** From the armpit down the inner side of the arm. */
const innerArm: Line = [
  [146, -134],
  [149, -176],
  [153, -226],
  [158, -276],
  [165, -330],
  [172, -380],
  [178, -430],
];
const side: Line = [
  [146, -134],
  [145, -180],
  [140, -240],
  [134, -300],
  [130, -350],
  [133, -400],
  [141, -440],
];
export const flanks: readonly Line[] = [flank, mirrored(flank)];
export const innerArms: readonly Line[] = [innerArm, mirrored(innerArm)];
export const sides: readonly Line[] = [side, mirrored(side)];

/** The filled body: round both flanks, arms and sides. */
export const bodyRuns: readonly (readonly Point[])[] = [
  flank,
  innerArm.toReversed(),
  side,
  mirrored(side).toReversed(),
  mirrored(innerArm),
  mirrored(flank).toReversed(),
];

/** Light surface lines: folds at the armpits, the notch over the breastbone, the left collar bone under the skin. */
export const surfaceLines: readonly Line[] = [
  [
    [128, -78],
    [142, -104],
    [146, -134],
  ],
  [
    [20, -24],
    [60, -14],
    [104, -6],
    [140, -2],
  ],
  [
    [44, 96],
    [34, 40],
    [20, -4],
    [12, -24],
  ],
  [
    [-44, 96],
    [-34, 40],
    [-20, -4],
    [-12, -24],
  ],
];
/** Construction line at the height of the eyes, bent round the head. */
export const eyeLine: Line = [
  [-76, 206],
  [-40, 197],
  [0, 194],
  [40, 197],
  [76, 206],
];
/** Shadow down the far side. */
export const shadows: readonly Line[] = [
  ...[0, 1, 2].map((k): Line => [
    [69 - k * 5.5, 222 - k * 9],
    [66.5 - k * 6, 170 - k * 12],
    [54 - k * 6.5, 124 - k * 5],
  ]),
  ...[0, 1, 2].map((k): Line => [
    [221 - k * 7, -78 - k * 10],
    [223 - k * 7, -130],
    [223 - k * 6.5, -186 - k * 16],
  ]),
  ...[0, 1, 2].map((k): Line => [
    [139 - k * 6.5, -172 - k * 6],
    [135 - k * 6.5, -226],
    [129 - k * 6.5, -286 - k * 10],
  ]),
];
export const middleLine: Line = [
  [0, 326],
  [0, -440],
];
