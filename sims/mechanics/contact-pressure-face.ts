import type { Face } from '../geometry/index.ts';
import { positive } from '../geometry/numeric.ts';
import { sumsOnFace, compressiveOnFace } from './contact-pressure-face-sums.ts';
import { patchesOnFace } from './contact-pressure-face-patches.ts';
import { dropThroughFace } from './contact-pressure-deepest.ts';
import { lookAlongRim, type LookedRim } from './contact-pressure-rim.ts';
import { sectorsOf, touchHeightOf, type Sector } from './contact-pressure-rays.ts';
import { ballOver, type BallOverFace } from './contact-pressure-spot.ts';
import type { PressedBall } from './contact-pressure-types.ts';

/** A ball over a face with all that can be known before it is pressed in. */
export interface FaceContact {
  readonly ball: BallOverFace;
  readonly sectors: readonly Sector[];
  readonly rims: readonly LookedRim[];
  /** Cosine and sine of the direction of the translation. */
  readonly heading: readonly [cosine: number, sine: number];
}

/**
 * A ball over a face of any outline, with its lip and its defect. Quadrature follows the rays from the middle of the face,
 * so that rim and lip lie on its borders; on each ray it takes the stretches that are pressed, of which a lip or a bridged
 * hollow makes several.
 */
export function pressedOnFace(
  face: Face,
  ballRadius: number,
  translation: number,
  direction: number,
  thickness: number,
): PressedBall {
  positive('ballRadius', ballRadius, 'mm');
  const heading = [Math.cos(direction), Math.sin(direction)] as const;
  const ball = ballOver(face, ballRadius, translation * heading[0], translation * heading[1]);
  const sectors = sectorsOf(ball);
  const touchHeight = touchHeightOf(sectors);
  if (!(translation >= 0 && touchHeight > -Infinity)) {
    throw new RangeError(
      `translation is ${String(translation)}; allowed: 0 to where the ball is still over the face, mm`,
    );
  }
  const contact: FaceContact = { ball, sectors, rims: lookAlongRim(ball), heading };
  return {
    touchHeight,
    dropLimit: dropThroughFace(ball, sectors, touchHeight, thickness),
    compressiveAt: (drop) => compressiveOnFace(contact, touchHeight - drop),
    sumsAt: (drop) => sumsOnFace(contact, touchHeight - drop),
    patchesAt: (drop, bed) => patchesOnFace(contact, touchHeight - drop, bed),
  };
}
