import { face, film, head, scapularPlane } from './means.ts';
import { arcPoints, partFrame, polarPoints, type Point } from './path.ts';
import { inset } from './pen.ts';
import { socketProfile } from './socket-profile.ts';

/*
 * Right shoulder cut level through the middle of the head, seen from above.
 * mm from the centre of the head, x towards the chest, y towards the back.
 */

/** The level cut meets the plane of the neck this far from the head's centre, measured along the head's axis. */
const neckDistance =
  (head.radiusFront - head.height) / Math.sin(((180 - head.neckShaftAngle) * Math.PI) / 180);
const halfArc = (Math.acos(neckDistance / head.radiusAbove) * 180) / Math.PI;
const backEnd = head.retroversion + halfArc;
const frontEnd = head.retroversion - halfArc;

export const jointSurface = arcPoints([0, 0], head.radiusAbove, backEnd, frontEnd, 19);
const boneUnderCartilage: readonly Point[] = jointSurface.map(([x, y], i) => {
  const shrink = 1 - (1.4 / head.radiusAbove) * Math.sin((Math.PI * i) / 18) ** 0.6;
  return [x * shrink, y * shrink];
});

/** From the front end of the joint surface over the lesser tuberosity, the groove and the greater tuberosity. */
const tuberosities: readonly Point[] = [
  jointSurface.at(-1) ?? [0, 0],
  ...polarPoints([
    [304, 21.3],
    [293, 21.4],
    [282, 22.8],
    [271, 24.8],
    [261, 26.2],
    [252, 26.4],
    [245, 25],
    [240, 22.4],
    [235, 21],
    [230, 22.2],
    [225, 25],
    [217, 26.6],
    [204, 27],
    [190, 27.2],
    [176, 27],
    [163, 26.2],
    [150, 24.8],
    [137, 23],
    [123, 21.6],
    [109, 21.2],
  ]),
  jointSurface[0] ?? [0, 0],
];
export const humerusRuns = [boneUnderCartilage, tuberosities] as const;
export const cartilageRuns = [jointSurface, boneUnderCartilage.toReversed()] as const;
export const spongyBone = inset([...boneUnderCartilage, ...tuberosities.slice(1, -1)], () => 0.9);
/** The long tendon of the biceps lies in the groove. */
export const bicepsTendon: Point = polarPoints([[235, 24]])[0] ?? [0, 0];

/** u out of the socket, v towards the front. A face turned back points less far forward. */
const facing = 180 + scapularPlane - face.retroversion;
const deepest: Point = polarPoints([[facing - 180, head.radiusAbove + film]])[0] ?? [0, 0];
export const place = partFrame(deepest, facing);
const placed = (points: readonly Point[]): readonly Point[] => points.map(place);

const profile = socketProfile({
  surfaceRadius: head.radiusAbove + face.radialMismatch,
  faceWidth: face.lowerWidth,
  boneDepth: face.boneDepthAbove,
  labralDepth: face.labralDepthAbove,
  cartilage: 1.3,
});
export const socketCartilage = profile.cartilage.map(placed);
export const labrumFront = profile.labrum[0].map(placed);
export const labrumBack = profile.labrum[1].map(placed);
const socketBone = placed(profile.bone);

const frontOfBlade = placed([
  [0.6, 14.9],
  [-3, 14.8],
  [-8.6, 11.4],
  [-15, 8],
  [-23, 5.6],
  [-33, 4.2],
  [-45, 3.6],
  [-57, 4],
]);
export const bladeBreak = placed([
  [-57, 4],
  [-58.4, 2.6],
  [-56.4, 1],
  [-57.4, -0.4],
]);
const backOfBlade = placed([
  [-57.4, -0.4],
  [-45, -0.6],
  [-34, -1],
  [-25, -3],
  [-17, -7.4],
  [-10, -12],
  [-3.4, -14.8],
  [0.6, -14.9],
]);
export const scapulaRuns = [socketBone, frontOfBlade, bladeBreak, backOfBlade] as const;
export const scapulaEdge = [backOfBlade, socketBone, frontOfBlade] as const;
export const vault = placed([
  [-1.6, -13],
  [-2.8, -7],
  [-3, 0],
  [-2.8, 7],
  [-1.6, 13],
  [-4, 12.8],
  [-9, 9.6],
  [-15, 6.4],
  [-22, 4],
  [-30, 2.6],
  [-35, 1.6],
  [-30, 0.2],
  [-24, -1.6],
  [-17, -5.6],
  [-10, -10.2],
  [-4.4, -13],
]);
