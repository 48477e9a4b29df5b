import { place } from './from-above.ts';
import { polarPoints, type Point } from './path.ts';

/*
 * Muscles in the section from above, mm from the centre of the head. The two edges of a muscle run the same way,
 * from its inner end to its tendon; the scapula's own axes (u, v) place what lies on the blade.
 */
const on = (points: readonly Point[]): readonly Point[] => points.map(place);

export const subscapularisNear: readonly Point[] = [
  ...on([
    [-57, 5],
    [-45, 4.6],
    [-33, 5.4],
    [-22, 7.2],
    [-12, 11],
    [-4, 17],
    [3, 18.2],
  ]),
  ...polarPoints([
    [-34, 24],
    [-54, 23.4],
    [-74, 23.4],
    [-92, 24],
    [-106, 26.2],
  ]),
];
export const subscapularisFar: readonly Point[] = [
  ...on([
    [-54, 21],
    [-44, 23.6],
    [-33, 24.6],
    [-22, 24.4],
    [-11, 24],
    [-1, 24.6],
    [8, 26],
  ]),
  ...polarPoints([
    [-47, 31],
    [-62, 29.6],
    [-78, 28.8],
    [-94, 28],
    [-108, 26.4],
  ]),
];

export const infraspinatusNear: readonly Point[] = [
  ...on([
    [-57.4, -1.6],
    [-45, -1.8],
    [-34, -2.2],
    [-25, -4.4],
    [-15, -10],
    [-6, -16],
    [2, -18],
  ]),
  ...polarPoints([
    [88, 24.8],
    [103, 23.6],
    [119, 23.4],
    [133, 23.2],
    [147, 23.6],
  ]),
];
export const infraspinatusFar: readonly Point[] = [
  ...on([
    [-56, -15],
    [-45, -19.6],
    [-34, -23],
    [-24, -25],
    [-13, -25.8],
    [-4, -26],
    [3, -26.6],
  ]),
  ...polarPoints([
    [98, 32],
    [110, 30.2],
    [124, 28.6],
    [138, 27],
    [154, 25.2],
  ]),
];
/** Points from the inner end at which tendon begins. */
export const tendonFrom = 6;

const deltoid: readonly (readonly [degrees: number, inner: number, outer: number])[] = [
  [292, 37, 38],
  [280, 33.6, 40],
  [264, 31.4, 42],
  [245, 30.4, 43],
  [225, 30, 43.6],
  [205, 30, 44],
  [185, 30, 44],
  [165, 30.2, 43.6],
  [147, 31.4, 42.6],
  [131, 33.4, 41],
  [119, 36, 38.4],
];
export const deltoidInner = polarPoints(deltoid.map(([degrees, inner]) => [degrees, inner]));
export const deltoidOuter = polarPoints(deltoid.map(([degrees, , outer]) => [degrees, outer]));

export const skin: readonly Point[] = [
  [70, -36],
  [50, -38],
  [30, -42],
  ...polarPoints([
    [288, 46],
    [268, 48],
    [245, 48.6],
    [220, 49],
    [195, 49],
    [170, 48.8],
    [148, 48],
    [130, 47],
    [112, 46.6],
    [96, 48],
  ]),
  [10, 51.6],
  [22, 55.4],
];

/** Chest wall, where the subscapularis slides. */
export const chestWall: readonly Point[] = [
  [84, 34],
  [80, 16],
  [72, 0],
  [62, -14],
  [52, -24],
  [40, -32],
];
