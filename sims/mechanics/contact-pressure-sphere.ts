import { climbAt, type SphericalSocket } from '../geometry/index.ts';
import {
  capContact,
  deepestOnCap,
  dropThroughLayer,
  poseAfter,
  type CapContact,
  type CapPose,
} from './contact-pressure-cap.ts';
import { edgeLoadOnCap } from './contact-pressure-edge.ts';
import { patchesOnCap } from './contact-pressure-patches.ts';
import { loadsOnCap } from './contact-pressure-rings.ts';
import type { ContactSums, PressedBall } from './contact-pressure-types.ts';

/** How far from the rim, along the surface, counts as near it, mm. */
export const RIM_MARGIN = 1;

/**
 * A ball over a spherical socket. Quadrature goes along one angle only and knows the rim exactly, so it is good to some
 * ten digits whatever the size of the patch.
 */
export function pressedOnSphere(
  socket: SphericalSocket,
  ballRadius: number,
  translation: number,
  direction: number,
  thickness: number,
): PressedBall {
  const cap = capContact(socket, ballRadius, translation);
  return {
    dropLimit: dropThroughLayer(cap, thickness),
    touchHeight: ballRadius + climbAt(socket, ballRadius, translation),
    compressiveAt: (drop) => {
      const pose = poseAfter(cap, drop);
      return loadsOnCap(cap, pose).compressive + edgeLoadOnCap(cap, pose).compressive;
    },
    sumsAt: (drop) => sumsOnCap(cap, poseAfter(cap, drop)),
    patchesAt: (drop, bed) => patchesOnCap(cap, poseAfter(cap, drop), direction, bed),
  };
}

function sumsOnCap(cap: CapContact, pose: CapPose): ContactSums {
  const face = loadsOnCap(cap, pose);
  const edge = { ...edgeLoadOnCap(cap, pose), cross: 0 };
  const inner = cap.halfArc - RIM_MARGIN / cap.curvatureRadius;
  const compressive = face.compressive + edge.compressive;
  const clear = inner > 0 ? loadsOnCap(cap, pose, inner).compressive : 0;
  const deepest = deepestOnCap(cap, pose);
  // A contact so small that its extent is lost in rounding: all of it at the rim, at the peak pressure.
  const isLost = !(face.total > 0);
  return {
    state: stateOf(cap, pose),
    total: isLost ? compressive : face.total,
    reaction: { compressive, side: face.side + edge.side, cross: 0 },
    edge,
    nearRim: compressive - clear,
    area: isLost ? compressive / deepest : face.area,
    deepest,
    // Pressure p along the normal −P/R from a place P off the hollow's centre: its side part has the lever of the pressure.
    centre: [isLost ? cap.halfWidth : (cap.curvatureRadius * face.side) / face.total, 0],
  };
}

function stateOf(cap: CapContact, { tilt, reach }: CapPose): ContactSums['state'] {
  if (tilt >= cap.halfArc) return 'on the rim edge';
  return tilt + reach > cap.halfArc ? 'cut by the rim' : 'on the face';
}
