import { peakStabilityRatio, socketFromDepth, sphericalSocket } from '../../sims/geometry/index.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { keyOf } from '../../sims/study/prediction.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { cup, labrumCup, press, slipForce, wideCup, width } from './cups.ts';

const degrees = (angle: number): number => (angle * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/** The side force at slip under twice the press, among the same, twice and four times what it was. */
function loadDoubles() {
  const twice = 2 * slipForce;
  const fourfold = 4 * slipForce;
  const options = [
    { id: 'same', value: slipForce },
    { id: 'twice', value: twice },
    { id: 'fourfold', value: fourfold },
  ];
  return {
    key: keyOf(options, 2 * press * peakStabilityRatio(cup)),
    values: {
      press: quantity(press, 0, 'N'),
      doublePress: quantity(2 * press, 0, 'N'),
      same: quantity(slipForce, 0, 'N'),
      twice: quantity(twice, 0, 'N'),
      fourfold: quantity(fourfold, 0, 'N'),
      ratio: quantity(slipForce / press, 2),
    },
  };
}

/** A socket worn flat, pressed five times as hard as the lesson's cup. */
function wornFlat() {
  const load = 5 * press;
  const flat = socketFromDepth({ depth: 0, width });
  const held = load * peakStabilityRatio(flat);
  return {
    key: held === 0 ? 'smallest' : 'part',
    values: { load: quantity(load, 0, 'N'), ratio: quantity(peakStabilityRatio(flat), 0) },
  };
}

/** A socket told by its arc; the slips are the sine, and the tangent of the whole arc. */
function ratioFromArc() {
  const arc = 70;
  const half = radians(arc / 2);
  const socket = sphericalSocket({ curvatureRadius: 1, width: 2 * Math.sin(half) });
  return {
    values: {
      arc: quantity(arc, 0, '°'),
      halfArc: quantity(degrees(socket.halfArc), 0, '°'),
      ratio: quantity(peakStabilityRatio(socket), 2),
      sine: quantity(Math.sin(half), 2),
      wholeArc: quantity(Math.tan(2 * half), 2),
    },
  };
}

/** Two sockets of one depth, one as wide as a face is wide, one as wide as it is high. */
function sameDepth() {
  const narrow = peakStabilityRatio(cup);
  const wide = peakStabilityRatio(wideCup);
  return {
    key: narrow > wide ? 'narrow' : narrow < wide ? 'wide' : 'equal',
    values: {
      depth: quantity(cup.depth, 0, 'mm'),
      narrowWidth: quantity(cup.width, 0, 'mm'),
      wideWidth: quantity(wideCup.width, 0, 'mm'),
      narrow: quantity(narrow, 2),
      wide: quantity(wide, 2),
    },
  };
}

/** What a slip later than the frictionless ratio can and cannot come from. */
function slipsLate() {
  const ratio = peakStabilityRatio(cup);
  const friction = 0.07;
  const withFriction = peakStabilityRatio(cup, friction);
  return {
    key: withFriction > ratio ? 'friction' : undefined,
    values: {
      ratio: quantity(ratio, 2),
      friction: quantity(friction, 2),
      withFriction: quantity(withFriction, 2),
    },
  };
}

/** The labrum taken for a rigid lip. */
function softLip() {
  return {
    values: {
      radius: quantity(labrumCup.curvatureRadius, 0, 'mm'),
      depth: quantity(labrumCup.depth, 1, 'mm'),
      ratio: quantity(peakStabilityRatio(labrumCup), 2),
    },
  };
}

export const answers: Answers = {
  loadDoubles,
  wornFlat,
  ratioFromArc,
  sameDepth,
  slipsLate,
  softLip,
};
