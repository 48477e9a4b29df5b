import { pressedOnFace } from './contact-pressure-face.ts';
import { pressedOnSphere } from './contact-pressure-sphere.ts';
import type {
  CarriedContact,
  ContactPressure,
  ContactQuestion,
  ContactSums,
  ForceParts,
  PressedBall,
  UncarriedContact,
} from './contact-pressure-types.ts';
import { dropForLoad } from './foundation-load.ts';
import { foundationModulus } from './foundation.ts';
import { positive } from '../geometry/numeric.ts';

/**
 * Pressure between a rigid, smooth ball and a socket lined with a thin elastic layer, at a given translation and load.
 *
 * The layer is a bed of springs normal to the surface (an elastic foundation): p = k h, with k as in
 * {@link foundationModulus} and h the exact penetration of the ball along the surface's normal: for a place P with
 * normal n and the ball's centre c, b = n·(c − P) and h = √(b² + r² − |c − P|²) − b. The height of the ball is solved
 * for the load to 1e-10. Pressure acts along the surface's normal; where the rim cuts the patch its edge bears as well
 * (`edgeForce`). Patches and edge together are in equilibrium with load and side force.
 *
 * What it cannot say: springs do not know of each other, so the layer does not bulge, and pressure ends at the rim
 * without a peak. Near the rim real plastic is softer, having nothing beside it, and past first rim contact the numbers
 * tell a trend, not a stress. How far a patch inside the face may be believed: see `hertzContact`.
 *
 * @param question.translation mm, from 0 to where the rigid ball leaves the socket (half the width)
 * @param question.poisson 0 … 0.499
 * @returns numbers, or null for all of them where the load would press the ball through the whole layer
 * @throws RangeError naming the argument, its value and what is allowed
 *
 * Source: mechanics of the elastic foundation in Johnson, Contact Mechanics, ch. 4 (from memory); edge force: derived in
 * contact-pressure-edge.ts.
 */
export function contactPressure(question: ContactQuestion): ContactPressure {
  const { direction = 0 } = question;
  const { bed, ball, drop } = solveContact(question);
  if (drop === null) return uncarried(bed * ball.compressiveAt(ball.dropLimit));
  return carried(question, bed, ball, drop, direction);
}

/** The ball over its surface, the bed modulus, and the drop that carries the load, mm; null where there is none. */
export function solveContact(question: ContactQuestion): {
  readonly bed: number;
  readonly ball: PressedBall;
  readonly drop: number | null;
} {
  const { compressiveLoad, direction = 0 } = question;
  const bed = foundationModulus(question);
  positive('compressiveLoad', compressiveLoad, 'N');
  if (!Number.isFinite(direction)) {
    throw new RangeError(`direction is ${String(direction)}; allowed: any finite angle, rad`);
  }
  const ball = pressedBall(question, direction);
  const drop = dropForLoad(
    (candidate) => bed * ball.compressiveAt(candidate),
    compressiveLoad,
    ball.dropLimit,
  );
  return { bed, ball, drop };
}

function pressedBall(question: ContactQuestion, direction: number): PressedBall {
  const { ballRadius, translation, thickness } = question;
  return question.face === undefined
    ? pressedOnSphere(question.socket, ballRadius, translation, direction, thickness)
    : pressedOnFace(question.face, ballRadius, translation, direction, thickness);
}

/** Share of the compressive load within the rim's margin. */
export function rimShareOf({ nearRim, reaction }: ContactSums): number {
  return Math.min(1, Math.max(0, nearRim / reaction.compressive));
}

function carried(
  question: ContactQuestion,
  bed: number,
  ball: PressedBall,
  drop: number,
  direction: number,
): CarriedContact {
  const sums = ball.sumsAt(drop);
  const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
  const turned = (along: number, across: number): readonly [number, number] => [
    along * cosine - across * sine,
    along * sine + across * cosine,
  ];
  return {
    state: sums.state,
    peakPressure: bed * sums.deepest,
    meanPressure: (bed * sums.total) / sums.area,
    contactArea: sums.area,
    centreOfPressure: turned(...sums.centre),
    rimShare: rimShareOf(sums),
    penetration: sums.deepest,
    sideForce: bed * sums.reaction.side,
    crossForce: bed * sums.reaction.cross,
    edgeForce: times(sums.edge, bed),
    ballCentre: [...turned(question.translation, 0), ball.touchHeight - drop],
    patches: ball.patchesAt(drop, bed),
  };
}

function times({ compressive, side, cross }: ForceParts, factor: number): ForceParts {
  return { compressive: factor * compressive, side: factor * side, cross: factor * cross };
}

function uncarried(greatestLoad: number): UncarriedContact {
  return {
    state: 'too much for the layer',
    greatestLoad,
    peakPressure: null,
    meanPressure: null,
    contactArea: null,
    centreOfPressure: null,
    rimShare: null,
    penetration: null,
    sideForce: null,
    crossForce: null,
    edgeForce: null,
    ballCentre: null,
    patches: [],
  };
}
