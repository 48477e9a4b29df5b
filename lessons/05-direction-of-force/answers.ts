import { sphericalSocket } from '../../sims/geometry/index.ts';
import { restPosition } from '../../sims/mechanics/index.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { keyOf } from '../../sims/study/prediction.ts';
import { quantity } from '../../sims/study/quantity.ts';
import {
  backWeak,
  balanced,
  cup,
  held,
  inDegrees,
  radians,
  restOf,
  smallBall,
  turnedBack,
  under,
} from './cups.ts';

/** The slips are the contact's way in place of the centre's, and the tangent in place of the sine. */
function placeOfRest() {
  const [socketRadius, ballRadius, angle] = [28, 24, 20];
  const socket = sphericalSocket({ curvatureRadius: socketRadius, width: 30 });
  const alpha = radians(angle);
  const { translation } = restPosition({ socket, ballRadius, forceAngle: alpha });
  return {
    values: {
      ballRadius: quantity(ballRadius, 0, 'mm'),
      socketRadius: quantity(socketRadius, 0, 'mm'),
      angle: quantity(angle, 0, '°'),
      mismatch: quantity(socketRadius - ballRadius, 0, 'mm'),
      sine: quantity(Math.sin(alpha), 2),
      rest: quantity(held(translation), 2, 'mm'),
      wholeRadius: quantity(socketRadius * Math.sin(alpha), 2, 'mm'),
      tangent: quantity((socketRadius - ballRadius) * Math.tan(alpha), 2, 'mm'),
    },
  };
}

/** One turned socket, two heads. */
function morePlay() {
  const [large, small] = [held(turnedBack.gap).length, held(smallBall.gap).length];
  const [before, after] = [held(turnedBack.margin), held(smallBall.margin)];
  const isSameMargin = Math.abs(before - after) < 1e-9;
  return {
    key: small > large && isSameMargin ? 'gap-only' : small > large ? 'both-grow' : 'both-shrink',
    values: {
      turn: quantity(inDegrees(turnedBack.tilt), 0, '°'),
      largeRadius: quantity(turnedBack.cup.ballRadius, 0, 'mm'),
      smallRadius: quantity(smallBall.cup.ballRadius, 0, 'mm'),
      largeGap: quantity(large, 1, 'mm'),
      smallGap: quantity(small, 1, 'mm'),
      margin: quantity(inDegrees(before), 1, '°'),
    },
  };
}

/** A socket told by its arc. */
function marginFromArc() {
  const [arc, angle] = [64, 20];
  const socket = sphericalSocket({ curvatureRadius: 1, width: 2 * Math.sin(radians(arc / 2)) });
  const { marginAngle } = restPosition({ socket, ballRadius: 1, forceAngle: radians(angle) });
  return {
    values: {
      arc: quantity(arc, 0, '°'),
      angle: quantity(angle, 0, '°'),
      halfArc: quantity(arc / 2, 0, '°'),
      margin: quantity(inDegrees(marginAngle), 0, '°'),
      fromWhole: quantity(arc - angle, 0, '°'),
    },
  };
}

/** A force that leans to one side on a socket that is turned to the other. */
function twoTurns() {
  const [turn, lean] = [12, 8];
  const options = [
    { id: 'difference', value: turn - lean },
    { id: 'turn', value: turn },
    { id: 'sum', value: turn + lean },
  ];
  const { angle } = under({
    version: turn,
    frontCuffSize: 0,
    backCuffSize: 0,
    othersSize: 100,
    othersTurn: -lean,
  });
  return {
    key: keyOf(options, inDegrees(held(angle))),
    values: {
      turn: quantity(turn, 0, '°'),
      lean: quantity(lean, 0, '°'),
      difference: quantity(turn - lean, 0, '°'),
      sum: quantity(turn + lean, 0, '°'),
    },
  };
}

/** A face that looks up, under a straight pull. */
function lookingUp() {
  const tilt = 10;
  const { angle, margin } = under({ plane: 'front', inclination: tilt });
  return {
    key: held(angle) > 0 ? 'upper' : held(angle) < 0 ? 'lower' : 'neither',
    values: {
      tilt: quantity(tilt, 0, '°'),
      halfArc: quantity(inDegrees(cup.halfArc), 1, '°'),
      margin: quantity(inDegrees(held(margin)), 1, '°'),
    },
  };
}

/** A weak muscle behind the ball. */
function weakBehind() {
  const { lean } = backWeak;
  return {
    key: lean > 0 ? 'back' : lean < 0 ? 'front' : 'middle',
    values: {
      lean: quantity(inDegrees(lean), 1, '°'),
      rest: quantity(restOf(backWeak), 1, 'mm'),
      weakForce: quantity(backWeak.netSize, 0, 'N'),
      wholeForce: quantity(balanced.netSize, 0, 'N'),
    },
  };
}

/** Two pulls at a right angle. */
function addTwo() {
  const [inward, aside] = [240, 80];
  const lean = inDegrees(Math.atan2(aside, inward));
  return {
    values: {
      inward: quantity(inward, 0, 'N'),
      aside: quantity(aside, 0, 'N'),
      lean: quantity(lean, 1, '°'),
      upsideDown: quantity(90 - lean, 1, '°'),
      byShare: quantity((90 * aside) / (aside + inward), 1, '°'),
    },
  };
}

export const answers: Answers = {
  placeOfRest,
  morePlay,
  marginFromArc,
  twoTurns,
  lookingUp,
  weakBehind,
  addTwo,
};
