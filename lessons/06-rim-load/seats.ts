import { posedByTheory, type Posed } from '../../sims/benches/rocking-bench/posed.ts';
import { angleAt, backSize, hollowOf, seatOf } from '../../sims/benches/rocking-bench/seat.ts';
import {
  defaultSetting,
  type Design,
  type RockingSetting,
} from '../../sims/benches/rocking-bench/settings.ts';
import { BODY } from '../../sims/figures/section.ts';
import {
  peakStabilityRatio,
  socketFromDepth,
  type SphericalSocket,
} from '../../sims/geometry/index.ts';
import { factEntry, factValue } from '../fact-value.ts';

/*
 * Everything the lesson shows, computed. The socket is the one that Rocking Bench opens with, on bone that grips while it is
 * pressed, so that nothing slides. Sizes, presses and holds are teaching values.
 */

const cemented: Design = { ...defaultSetting.a, bed: 'rough' };
/** A back with nothing on it. */
export const bare: Design = { ...cemented, layout: 'none' };
export const onePeg: Design = { ...cemented, layout: 'one' };
/** Top and bottom. */
export const twoPegs: Design = { ...cemented, layout: 'upright' };
/** The same, held less firmly. */
export const twoPressFit: Design = { ...twoPegs, kind: 'fluted press-fit' };
export const onePressFit: Design = { ...onePeg, kind: 'fluted press-fit' };

/** Rocking Bench as the lesson opens it: A bare, B with one peg, the ball in the middle. */
export const opening: RockingSetting = { ...defaultSetting, place: 0, a: bare, b: onePeg };
/** N */
export const press = opening.press;
/** Of the standard test, N */
export const testPress = factValue('rocking-test-load');

/** Of the back, mm, from bottom to top and from back to front. */
export const height = backSize(opening);
export const { width, mismatch: diametralMismatch } = opening;
export const { curvatureRadius, halfArc } = hollowOf(opening);
export const ballRadius = opening.ballDiameter / 2;
/** Of the plastic at its thinnest, mm: from the bottom of the hollow to the back. */
export const thickness = BODY.thickness;
/** From the middle to the rim of the hollow, mm. */
export const halfMouth = curvatureRadius * Math.sin(halfArc);

/** Half the length of the kern on the way to the top, mm: of a rectangular back, and of the round one on the bench. */
export const kernOfRectangle = height / 6;
export const kern = height / 8;

/** A place of the ball, and what follows from it. Lengths mm. */
export interface Place {
  /** Per cent of the way to the rim */
  readonly place: number;
  /** rad */
  readonly angle: number;
  /** Of the contact from the middle */
  readonly contact: number;
  /** How far the ball has moved */
  readonly travel: number;
  /** Where the force meets the back, from the middle */
  readonly foot: number;
}

/** Where the line of a force that leans by `angle` at its contact in a cup meets the back, mm from the middle. */
export const footOf = (radius: number, angle: number, thick: number = thickness): number =>
  (radius + thick) * Math.tan(angle);

/** The ball so far on its way to the rim, per cent. */
export function placeOf(place: number): Place {
  const angle = angleAt(opening, place);
  return {
    place,
    angle,
    contact: curvatureRadius * Math.sin(angle),
    travel: (curvatureRadius - ballRadius) * Math.sin(angle),
    foot: footOf(curvatureRadius, angle),
  };
}

/** The ball where its force meets the back so far from the middle, mm. */
export function placeWithFoot(foot: number): Place {
  const angle = Math.atan(foot / (curvatureRadius + thickness));
  return placeOf((100 * Math.sin(angle)) / Math.sin(halfArc));
}

/** Where the far edge begins to lift, and where a bare back goes over. */
export const firstLift = placeWithFoot(kern);
export const goingOver = placeWithFoot(height / 2);
export const halfway = placeOf(50);
export const atRim = placeOf(100);
/** Near the rim, as far as the ball goes in the lesson’s rocking. */
export const nearRim = placeOf(90);

/** How a design rests under the ball, by the solver. */
export function rest(design: Design, change: Partial<RockingSetting> = {}): Posed {
  const setting = { ...opening, ...change };
  return posedByTheory(setting, seatOf(setting, design));
}

/** First prediction: where the far edge begins to lift. */
export const firstLiftOutcome =
  firstLift.place < 5 ? 'at-once' : firstLift.place < 70 ? 'part-way' : 'at-rim';

/** Second prediction: one peg, the ball near the rim, the press doubled. */
export const before = rest(onePeg, { place: nearRim.place, press: press / 2 });
export const after = rest(onePeg, { place: nearRim.place });
export const doubled = after.liftOff / before.liftOff;
export const doubledOutcome =
  Math.abs(doubled - 2) < 1e-3 ? 'doubles' : doubled < 2 ? 'less' : 'more';

/** Half-way to the rim under the lesson’s press: a peg in the middle props the back there. */
export const middleway = {
  bare: rest(bare, { place: halfway.place }),
  onePeg: rest(onePeg, { place: halfway.place }),
};

/** Near the rim under the lesson’s press. */
export const near = {
  bare: rest(bare, { place: nearRim.place }),
  onePeg: after,
  twoPegs: rest(twoPegs, { place: nearRim.place }),
};

/** Pull at which a peg of a design lets go, N. */
export const strengthOf = (design: Design): number =>
  seatOf(opening, design).holds[0]?.strength ?? 0;

/** Two cups of one mouth: the bench’s and one half as deep, the ball at the rim. */
export interface Cup {
  readonly socket: SphericalSocket;
  readonly ratio: number;
  /** mm from the middle of the back */
  readonly foot: number;
}

function cupOf(depth: number): Cup {
  const socket = socketFromDepth({ width: 2 * halfMouth, depth });
  return {
    socket,
    ratio: peakStabilityRatio(socket),
    foot: footOf(socket.curvatureRadius, socket.halfArc),
  };
}

const depth = curvatureRadius * (1 - Math.cos(halfArc));
export const deepCup = cupOf(depth);
export const shallowCup = cupOf(depth / 2);

/** Loose sockets with a torn cuff, counted: the source gives them out of all it had. */
export const looseWithTear = Math.round(
  (factValue('loose-sockets-cuff-torn') / 100) * (factEntry('loose-sockets-cuff-torn').n ?? 0),
);
