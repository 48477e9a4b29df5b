import { face, film, head } from './means.ts';
import { partFrame, type Point } from './path.ts';
import { socketProfile } from './socket-profile.ts';

/*
 * Right scapula and the outer end of the clavicle, seen from the front in the plane of the blade, the socket cut.
 * mm from the centre of the humeral head, x towards the chest, y up.
 */

/** u out of the socket, v down along the face (the face looks outwards and a little up). */
const facing = 180 - face.inclination;
const gap = head.radiusFront + film;
const deepest: Point = [
  -gap * Math.cos((facing * Math.PI) / 180),
  -gap * Math.sin((facing * Math.PI) / 180),
];
export const place = partFrame(deepest, facing);

const section = {
  surfaceRadius: head.radiusFront + face.radialMismatch,
  faceWidth: face.height,
  boneDepth: face.boneDepth,
  labralDepth: face.labralDepth,
  cartilage: 1.3,
};
const profile = socketProfile(section);
const placed = (points: readonly Point[]): readonly Point[] => points.map(place);

export const socketBone = placed(profile.bone);
export const socketSurface = placed(profile.surface);
export const cartilage = profile.cartilage.map(placed);
export const labrumBelow = profile.labrum[0].map(placed);
export const labrumAbove = profile.labrum[1].map(placed);

const [top, bottom] = [place([1.6, -20.2]), place([1.4, 20.2])];

/** Neck and upper edge of the blade, from the top of the socket to the break. */
const upperEdge: readonly Point[] = [
  top,
  [29.6, 18.6],
  [35.5, 13.8],
  [44, 11.2],
  [54, 12.4],
  [66, 16.6],
  [79, 23],
];
export const bladeBreak: readonly Point[] = [
  [79, 23],
  [80.4, 13],
  [78, 3],
  [79.4, -9],
  [76.4, -20],
  [75.6, -30],
  [69.4, -37],
  [66, -46],
  [58.4, -49.4],
  [53, -56],
];
/** Outer edge of the blade, from the break up to the bottom of the socket. */
const outerEdge: readonly Point[] = [
  [53, -56],
  [47.6, -48],
  [41, -40],
  [34, -32.8],
  [28.4, -28.4],
  [23, -26.4],
  bottom,
];

export const bladeEdge = [outerEdge, socketBone.toReversed(), upperEdge] as const;
export const bladeRuns = [socketBone.toReversed(), upperEdge, bladeBreak, outerEdge] as const;

/** What the cut opens behind the socket: spongy bone that narrows into the blade. */
export const vault: readonly Point[] = [
  ...socketBone.toReversed().map(([x, y]): Point => [x + 1.1, y * 0.955]),
  [30, 16.4],
  [36.4, 11.6],
  [44, 8.4],
  [50, 4],
  [52.4, -4],
  [51, -15],
  [46.6, -26],
  [43.6, -36.4],
  [40, -36.6],
  [34.6, -30.6],
  [28.6, -26.2],
  [23.4, -24.2],
];

/** Ridges on the front of the blade that run together towards the socket. */
export const ridges: readonly (readonly Point[])[] = [
  [
    [76.4, 15.4],
    [69, 10.6],
    [62, 7.6],
    [56, 5.6],
  ],
  [
    [76, 12.6],
    [70, 8.6],
    [65, 6.4],
    [61, 5],
  ],
  [
    [76, -3.2],
    [69, -3.6],
    [62, -3.4],
    [56, -2.8],
  ],
  [
    [75.4, -6],
    [70, -6.2],
    [65, -6],
    [61, -5.4],
  ],
  [
    [73.4, -22],
    [67, -19.2],
    [60.6, -15.6],
    [55, -12],
  ],
  [
    [71.6, -23.8],
    [67, -21.8],
    [63, -19.4],
    [59.6, -17],
  ],
];

/** The thick outer border of the blade. */
export const borderLine: readonly Point[] = [
  [47, -29],
  [51.6, -36],
  [56, -43],
  [60, -48.6],
];

export const acromion: readonly Point[] = [
  [-11.4, 37.2],
  [-10, 34],
  [-5.6, 33],
  [2, 33.8],
  [9, 35.6],
  [13.6, 37.4],
  [15.2, 41],
  [14.8, 45],
  [11.6, 46.6],
  [4, 45],
  [-4, 42.4],
  [-9.4, 40.2],
];

export const clavicleEnd: readonly Point[] = [
  [79, 57.4],
  [66, 53],
  [52, 51],
  [38, 51],
  [26, 51],
  [20.4, 49.8],
  [18.2, 46.4],
  [18.2, 41.6],
  [20.6, 39.2],
  [28, 38.8],
  [40, 39.6],
  [54, 40.4],
  [67, 42.2],
  [79, 46],
];
export const clavicleBreak: readonly Point[] = [
  [79, 46],
  [80.4, 50],
  [77.8, 53.6],
  [79, 57.4],
];
export const clavicleRuns = [clavicleEnd, clavicleBreak] as const;

/** The coracoid lies in front of the cut: it is drawn as a ghost. */
export const coracoid: readonly (readonly Point[])[] = [
  [
    [42, 12.4],
    [43.6, 19],
    [41, 25.6],
    [34.6, 28],
    [27.4, 25.4],
    [21.4, 20],
    [17.2, 13.6],
    [17, 9],
    [20.4, 7.8],
    [24.6, 11],
    [29, 15.6],
    [33, 16.8],
    [34.4, 12.6],
  ],
];
