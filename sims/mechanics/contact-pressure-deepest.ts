import { localMaximum } from '../geometry/local-maximum.ts';
import type { FaceContact } from './contact-pressure-face.ts';
import { pressedParts, partsOf } from './contact-pressure-ray.ts';
import type { Sector } from './contact-pressure-rays.ts';
import {
  goTo,
  penetrationAtSpot,
  rayAt,
  type BallOverFace,
  type Ray,
} from './contact-pressure-spot.ts';
import { signChange } from '../geometry/sign-change.ts';

const PLACE_TOLERANCE = 1e-5;
const TURN_TOLERANCE = 1e-6;

/** Of the rim's distance: as near as this counts as on it. */
const ON_RIM = 1e-5;

/** The deepest place of a pressed patch. */
export interface Deepest {
  /** mm */
  readonly penetration: number;
  readonly isOnRim: boolean;
}

/**
 * The deepest penetration on a face by a ball at this height.
 *
 * @param near a direction in which it is nearly reached, rad
 * @param spacing how far off the deepest direction may be, rad
 */
export function deepestOnFace(
  { ball }: FaceContact,
  height: number,
  near: number,
  spacing: number,
): Deepest {
  const along = (angle: number): number => deepestOnRay(ball, rayAt(ball.face, angle), height);
  const peak = localMaximum(along, near - spacing, near + spacing, near, TURN_TOLERANCE);
  const ray = rayAt(ball.face, peak.at);
  const onLip = ray.lip < ray.end;
  goTo(ball, ray, ray.end * (1 - ON_RIM), onLip);
  const justInside = penetrationAtSpot(ball, height);
  goTo(ball, ray, ray.end, onLip);
  const onRim = penetrationAtSpot(ball, height);
  return {
    penetration: peak.value,
    isOnRim: onRim >= justInside && onRim >= peak.value * (1 - 1e-9),
  };
}

function deepestOnRay(ball: BallOverFace, ray: Ray, height: number): number {
  let deepest = 0;
  for (const { from, to, onLip } of pressedParts(ball, ray, height)) {
    const along = (distance: number): number => {
      goTo(ball, ray, distance, onLip);
      return penetrationAtSpot(ball, height);
    };
    // One peak on a pressed stretch: it is where the ball goes deepest, or at an end.
    const middle = localMaximum(along, from, to, (from + to) / 2, PLACE_TOLERANCE);
    deepest = Math.max(deepest, along(from), along(to), middle.value);
  }
  return deepest;
}

/** Rays, and places on each part of them, that tell how deep a ball is pressed anywhere. */
const LIMIT_RAYS = 36;
const LIMIT_PLACES = 5;

/**
 * The drop (mm) at which the deepest penetration reaches the layer's whole thickness, or the ball's radius where that is
 * less; by places a few millimetres apart, so within a hundredth.
 */
export function dropThroughFace(
  ball: BallOverFace,
  sectors: readonly Sector[],
  touchHeight: number,
  thickness: number,
): number {
  const deepest = Math.min(thickness, ball.ballRadius);
  const rays = sectors.flatMap(({ from, to }) => {
    const count = Math.ceil((LIMIT_RAYS * (to - from)) / (2 * Math.PI));
    return Array.from({ length: count }, (_, i) =>
      rayAt(ball.face, from + ((to - from) * (i + 0.5)) / count),
    );
  });
  const excess = (drop: number): number => {
    let most = 0;
    for (const ray of rays) {
      for (const { from, to, onLip } of partsOf(ray)) {
        for (let i = 0; i < LIMIT_PLACES; i++) {
          goTo(ball, ray, from + ((to - from) * i) / (LIMIT_PLACES - 1), onLip);
          most = Math.max(most, penetrationAtSpot(ball, touchHeight - drop));
        }
      }
    }
    return most - deepest;
  };
  let high = deepest;
  while (excess(high) < 0) high *= 1.5;
  return signChange(excess, 0, -deepest, high, excess(high), deepest * 1e-3);
}
