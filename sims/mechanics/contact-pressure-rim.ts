import { placeAlong, type RimRun } from '../geometry/rim-samples.ts';
import { differentiateSurface } from '../geometry/two-radius-surface.ts';
import { lookAlong, rangesAbove, type Looked } from './contact-pressure-ranges.ts';
import { GAUSS_NODES, GAUSS_WEIGHTS } from './contact-pressure-rings.ts';
import {
  goTo,
  penetrationAtSpot,
  rayAt,
  touchHeight,
  type BallOverFace,
} from './contact-pressure-spot.ts';
import type { ForceParts } from './contact-pressure-types.ts';

const PANELS = 10;
const PLACE_TOLERANCE = 1e-9;

/** A piece of the rim, looked at for the height of first touch. */
export interface LookedRim {
  readonly run: RimRun;
  readonly looked: Looked;
}

export function lookAlongRim(ball: BallOverFace): readonly LookedRim[] {
  return ball.face.rim.pieces.map((run) => ({
    run,
    looked: lookAlong(
      touchAlong(ball, run),
      0,
      1,
      Math.ceil((run.last - run.first) / 4),
      PLACE_TOLERANCE,
    ),
  }));
}

/**
 * The line load of the rim, ½ k h² outward within the face for each millimetre, as in contact-pressure-edge.ts, for a bed
 * modulus of 1 N/mm³.
 *
 * With t the tangent of the rim, run through against the clock, and n the normal, outward within the face is t × n.
 */
export function edgeLoadOnRim(
  ball: BallOverFace,
  rims: readonly LookedRim[],
  height: number,
  direction: readonly [cosine: number, sine: number],
): ForceParts {
  let [x, y, z] = [0, 0, 0];
  for (const { run, looked } of rims) {
    const ranges = rangesAbove(touchAlong(ball, run), looked, height, PLACE_TOLERANCE);
    for (const { from, to } of ranges) {
      for (let panel = 0; panel < PANELS; panel++) {
        for (let node = 0; node < 3; node++) {
          const v = from + ((to - from) * (panel + (GAUSS_NODES[node] ?? 0))) / PANELS;
          const weight = ((to - from) * (GAUSS_WEIGHTS[node] ?? 0)) / PANELS;
          const { dx, dy } = goAlong(ball, run, v);
          const { zx, zy } = ball.spot;
          const penetration = penetrationAtSpot(ball, height);
          const strength = (weight * penetration ** 2) / 2 / Math.sqrt(1 + zx * zx + zy * zy);
          const dz = zx * dx + zy * dy;
          x += strength * (dy + dz * zy);
          y -= strength * (dx + dz * zx);
          z += strength * (dy * zx - dx * zy);
        }
      }
    }
  }
  const [cosine, sine] = direction;
  return { compressive: z, side: -(x * cosine + y * sine), cross: x * sine - y * cosine };
}

function touchAlong(ball: BallOverFace, run: RimRun): (v: number) => number {
  return (v) => {
    goAlong(ball, run, v);
    return touchHeight(ball);
  };
}

/** Takes the spot to a place on the rim, with the slopes of the side of it that is left; returns the derivative by v. */
function goAlong(
  ball: BallOverFace,
  { piece }: RimRun,
  v: number,
): { readonly dx: number; readonly dy: number } {
  const { face, spot } = ball;
  const place = placeAlong(face, piece, v);
  if (piece.onLip) {
    const ray = rayAt(face, Math.atan2(place.y, place.x));
    goTo(ball, ray, Math.hypot(place.x, place.y), true);
  } else {
    spot.x = place.x;
    spot.y = place.y;
    const { curvatureRadiusAP, curvatureRadiusSI } = face;
    differentiateSurface(spot, 1 / curvatureRadiusAP, 1 / curvatureRadiusSI, place.x, place.y);
  }
  return place;
}
