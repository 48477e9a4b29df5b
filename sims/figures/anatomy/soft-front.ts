import type { Point } from './path.ts';

/*
 * Soft parts in the same section as the bones: mm from the centre of the humeral head, x towards the chest, y up.
 * Edges of a muscle run the same way, from its upper or inner end outwards, so that fibres can be laid between them.
 */

/** Supraspinatus: over the head, under the bony roof. */
export const cuffUpper: readonly Point[] = [
  [79, 39],
  [66, 36.4],
  [54, 34.8],
  [42, 33.6],
  [30, 32.4],
  [18, 31.8],
  [6, 31.6],
  [-5, 30.6],
  [-14, 27.8],
  [-21.4, 22.6],
  [-26.2, 15.4],
];
export const cuffLower: readonly Point[] = [
  [79, 23.6],
  [66, 17.4],
  [54, 13.2],
  [42, 12],
  [34, 15.2],
  [24, 20.8],
  [14, 22.8],
  [6, 25.2],
  [-3, 25.4],
  [-10, 22.8],
  [-15.6, 18.4],
];
/** Number of points from the inner end at which muscle gives way to tendon. */
export const tendonFrom = 5;

export const deltoidInner: readonly Point[] = [
  [-11, 36],
  [-17, 32],
  [-24.6, 24],
  [-31, 14],
  [-33.6, 2],
  [-33, -12],
  [-29.6, -28],
  [-26.4, -44],
  [-24.2, -62],
  [-23.6, -78],
];
export const deltoidOuter: readonly Point[] = [
  [-8, 41],
  [-17, 40],
  [-28, 34.6],
  [-37, 25],
  [-43, 11],
  [-45.4, -6],
  [-44.4, -24],
  [-40.6, -44],
  [-37, -62],
  [-35, -76],
];

/** Joint capsule: a loose fold hangs under the head. */
export const capsuleBelow: readonly Point[] = [
  [19.8, -23.4],
  [19.8, -30],
  [17, -33.4],
  [13.8, -31.6],
  [11.8, -27],
  [11.2, -22.6],
];

/** Skin, far outside the cut. */
export const skin: readonly Point[] = [
  [79, 69],
  [58, 59.6],
  [36, 55.6],
  [16, 53],
  [-4, 50.4],
  [-22, 45.6],
  [-36, 35],
  [-45.6, 18],
  [-50, -4],
  [-49.4, -26],
  [-45.4, -48],
  [-42.2, -62],
  [-40.6, -73],
];
