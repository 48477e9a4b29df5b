import type { Answers } from '../../sims/study/prepare-questions.ts';
import { keyOf } from '../../sims/study/prediction.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { factValue } from '../fact-value.ts';
import { slippedGaps } from './rocked.ts';
import { bare, deepCup, footOf, halfway, press, rest, shallowCup } from './seats.ts';
import { wedgeUnder } from './wedge.ts';

const MICROMETRES = 1000;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The slips are the contact in place of the foot, and the line carried only to the bottom of the hollow. */
function findTheFoot() {
  const [radius, thickness, angle] = [30, 6, 15];
  const lean = radians(angle);
  return {
    values: {
      radius: quantity(radius, 0, 'mm'),
      thickness: quantity(thickness, 0, 'mm'),
      angle: quantity(angle, 0, '°'),
      reach: quantity(radius + thickness, 0, 'mm'),
      tangent: quantity(Math.tan(lean), 3),
      foot: quantity(footOf(radius, lean, thickness), 1, 'mm'),
      contact: quantity(radius * Math.sin(lean), 1, 'mm'),
      withoutThickness: quantity(footOf(radius, lean, 0), 1, 'mm'),
    },
  };
}

const back = { width: 20, bed: 40 } as const;

/** A large force inside the kern, a small one outside. */
function whichLifts() {
  const [length, inside, outside, light] = [30, 4, 7, 90];
  const hard = 10 * light;
  const lifts = (load: number, foot: number): boolean =>
    wedgeUnder({ ...back, length }, load, foot).lift > 0;
  const [morning, evening] = [lifts(hard, inside), lifts(light, outside)];
  return {
    key: morning && evening ? 'both' : morning ? 'morning' : evening ? 'evening' : 'never',
    values: {
      length: quantity(length, 0, 'mm'),
      inside: quantity(inside, 0, 'mm'),
      outside: quantity(outside, 0, 'mm'),
      hard: quantity(hard, 0, 'N'),
      light: quantity(light, 0, 'N'),
      kern: quantity(length / 6, 0, 'mm'),
    },
  };
}

/** The slips are an even pressure in place of a wedge, and the way from foot to edge. */
function lengthInContact() {
  const [length, foot] = [32, 10];
  const fromEdge = length / 2 - foot;
  return {
    values: {
      length: quantity(length, 0, 'mm'),
      foot: quantity(foot, 0, 'mm'),
      fromEdge: quantity(fromEdge, 0, 'mm'),
      contact: quantity(wedgeUnder({ ...back, length }, press, foot).contact, 0, 'mm'),
      twice: quantity(2 * fromEdge, 0, 'mm'),
    },
  };
}

/** Two cups of one mouth at their rims. */
function deeperCup() {
  const [deep, shallow] = [deepCup.foot, shallowCup.foot];
  return {
    key: deep > shallow ? 'deep' : deep < shallow ? 'shallow' : 'alike',
    values: {
      deepFoot: quantity(deep, 1, 'mm'),
      shallowFoot: quantity(shallow, 1, 'mm'),
      deepRatio: quantity(deepCup.ratio, 2),
      shallowRatio: quantity(shallowCup.ratio, 2),
    },
  };
}

/** The bare back half-way under two presses. */
function pressHarder() {
  const lift = (each: number): number => rest(bare, { place: halfway.place, press: each }).liftOff;
  const [first, second] = [lift(press), lift(2 * press)];
  const options = [
    { id: 'half', value: first / 2 },
    { id: 'same', value: first },
    { id: 'twice', value: 2 * first },
  ];
  const micrometres = (value: number) => quantity(value * MICROMETRES, 0, 'µm');
  return {
    key: keyOf(options, second),
    values: {
      press: quantity(press, 0, 'N'),
      more: quantity(2 * press, 0, 'N'),
      half: micrometres(first / 2),
      gap: micrometres(first),
      twice: micrometres(2 * first),
    },
  };
}

/** Pegs that slip and keep their strength. */
function slippedOnce() {
  const [first = 0, , third = 0] = slippedGaps;
  const last = slippedGaps.at(-1) ?? 0;
  const isSettled = Math.abs(last / third - 1) < 1e-3;
  return {
    key: !isSettled ? 'grows' : last > first * 1.01 ? 'settles' : 'returns',
    values: {
      first: quantity(first * MICROMETRES, 0, 'µm'),
      settled: quantity(last * MICROMETRES, 0, 'µm'),
    },
  };
}

function lessMotion() {
  return {
    values: { load: quantity(factValue('eccentric-load-of-test'), 0, 'N') },
  };
}

export const answers: Answers = {
  findTheFoot,
  whichLifts,
  lengthInContact,
  deeperCup,
  pressHarder,
  slippedOnce,
  lessMotion,
};
