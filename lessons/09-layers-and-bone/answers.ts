import type { Answers } from '../../sims/study/prepare-questions.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { factValue } from '../fact-value.ts';
import * as l from './layers.ts';
import * as w from './weeks.ts';

const mpa = (value: number) => quantity(value, 2, 'MPa');
const micrometres = (value: number) => quantity(value * w.MICROMETRES, 0, 'µm');

/** Two layers pressed one through the other. The slips take one modulus for both, and leave the plastic out. */
function pressedStack() {
  const [plastic, bone, pressure] = [5, 10, 2];
  const [plasticModulus, boneModulus] = [
    l.modulusOf('polyethylene'),
    l.modulusOf('cancellous bone'),
  ];
  const give = (thickness: number, modulus: number): number => (pressure * thickness) / modulus;
  const [plasticPart, bonePart] = [give(plastic, plasticModulus), give(bone, boneModulus)];
  return {
    values: {
      plastic: quantity(plastic, 0, 'mm'),
      bone: quantity(bone, 0, 'mm'),
      pressure: quantity(pressure, 0, 'MPa'),
      plasticModulus: quantity(plasticModulus, 0, 'MPa'),
      boneModulus: quantity(boneModulus, 0, 'MPa'),
      plasticPart: micrometres(plasticPart),
      bonePart: micrometres(bonePart),
      both: tenths(plasticPart + bonePart),
      boneOnly: tenths(bonePart),
      meanModulus: tenths(give(plastic + bone, (plasticModulus + boneModulus) / 2)),
    },
  };
}
/** Micrometres with one decimal. */
function tenths(value: number) {
  return quantity(value * w.MICROMETRES, 1, 'µm');
}

/** The strip of the prediction, and the same made longer. */
function longerJoint() {
  const [short, long] = [l.asItIs, l.longer];
  const peak = short.strip.peakShear;
  const times = long.setting.length / short.setting.length;
  const isSame = Math.abs(long.strip.peakShear / peak - 1) < 0.01;
  return {
    key: isSame ? 'same' : 'spread',
    values: {
      length: quantity(short.setting.length, 0, 'mm'),
      longer: quantity(long.setting.length, 0, 'mm'),
      pull: quantity(short.setting.pull, 0, 'N'),
      reach: quantity(short.strip.shear.transferLength, 1, 'mm'),
      peak: mpa(peak),
      same: mpa(long.strip.peakShear),
      spread: mpa(peak / times),
      halved: mpa(peak / 2),
    },
  };
}

/** Metal on bone: the lower layer, the bone, is pulled at the right end. */
function whichEnd() {
  const [metal, , bone] = l.shearAlong(l.metalOnBone);
  return {
    key: bone > 1.1 * metal ? 'bone' : metal > 1.1 * bone ? 'metal' : 'both',
    values: { bone: mpa(bone), metal: mpa(metal), equals: mpa(l.equals.strip.peakShear) },
  };
}

function shrinking() {
  const at = (share: number): number =>
    l.mismatchShear(l.BONDED, l.MISMATCH, (share * l.BONDED.length) / 2);
  const isAtEnds = at(1) === -at(-1) && Math.abs(at(0)) < 0.01 * at(1);
  return { key: isAtEnds ? 'ends' : 'even', values: { peak: mpa(at(1)) } };
}

/** The race of the lesson. The slip takes the fall of the motion for the rise of the stiffness. */
function shareNeeded() {
  return {
    values: {
      start: quantity(w.SLIGHT, 0, 'µm'),
      lower: quantity(w.LOWER, 0, 'µm'),
      times: quantity(w.stiffening, 0),
      stiffer: quantity(w.SLIGHT / w.LOWER, 2),
      share: quantity(100 * w.shareNeeded(w.SLIGHT), 0, '%'),
      drop: quantity(100 * (1 - w.LOWER / w.SLIGHT), 0, '%'),
    },
  };
}

function sameLoad() {
  const motions = [w.early.motion[1], w.late.motion[1]];
  const isBetween = motions.every(
    (motion) => motion * w.MICROMETRES > w.LOWER && motion * w.MICROMETRES < w.UPPER,
  );
  return {
    key: isBetween && w.late.share > 2 * w.early.share ? 'history' : 'wrong',
    values: {
      early: micrometres(w.early.motion[1]),
      late: micrometres(w.late.motion[1]),
      lower: quantity(w.LOWER, 0, 'µm'),
      upper: quantity(w.UPPER, 0, 'µm'),
    },
  };
}

function noLimit() {
  const of = (id: string, field: 'value' | 'sd' = 'value') =>
    quantity(factValue(id, field), 0, 'µm');
  const took = factValue('motion-of-implants-that-took');
  const isOverlapping =
    took + factValue('motion-of-implants-that-took', 'sd') >
    factValue('motion-of-implants-that-did-not-take') -
      factValue('motion-of-implants-that-did-not-take', 'sd');
  return {
    key: isOverlapping ? 'overlap' : 'safe',
    values: {
      took: of('motion-of-implants-that-took'),
      spread: of('motion-of-implants-that-took', 'sd'),
      failed: of('motion-of-implants-that-did-not-take'),
      ours: quantity(90, 0, 'µm'),
      mixed: of('ingrowth-motion-mixed'),
      lower: of('ingrowth-motion-most'),
    },
  };
}

export const answers: Answers = {
  pressedStack,
  longerJoint,
  whichEnd,
  shrinking,
  shareNeeded,
  sameLoad,
  noLimit,
};
