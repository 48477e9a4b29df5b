import type { Point } from './path.ts';

/*
 * A standing person from the front, head to waist; mm, x to the viewer's right from the middle, y up from the level
 * of the bony shoulder tips. A grown person of middle height, about 1.7 m. Teaching values.
 */
type Line = readonly Point[];

const mirrored = (line: Line): Line => line.map(([x, y]): Point => [-x, y]);

const halfHead: Line = [
  [0, 302],
  [34, 298],
  [60, 279],
  [74, 246],
  [76, 208],
  [71, 166],
  [60, 128],
  [42, 100],
  [20, 86],
  [0, 83],
];
export const headOutline: Line = [...halfHead.slice(0, -1), ...mirrored(halfHead).toReversed().slice(0, -1)];

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
  [174, 3],
  [198, -14],
  [214, -42],
  [222, -78],
  [222, -120],
  [220, -170],
  [222, -220],
  [228, -270],
  [235, -320],
  [238, -370],
  [240, -430],
];
/** From the armpit down the inner side of the arm. */
const innerArm: Line = [
  [152, -138],
  [160, -176],
  [170, -226],
  [178, -276],
  [184, -330],
  [190, -380],
  [194, -430],
];
const side: Line = [
  [152, -138],
  [155, -180],
  [150, -240],
  [142, -300],
  [137, -350],
  [140, -400],
  [148, -440],
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
    [146, -84],
    [152, -112],
    [152, -138],
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
  [
    [140, -120],
    [104, -150],
    [60, -154],
    [26, -140],
  ],
];
export const middleLine: Line = [
  [0, 326],
  [0, -440],
];
