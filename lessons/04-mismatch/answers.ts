import {
  peakStabilityRatio,
  rimContactTranslation,
  socketFromDepth,
  sphericalSocket,
} from '../../sims/geometry/index.ts';
import { contactPressure, hertzContact } from '../../sims/mechanics/index.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { factEntry, factRange, factValue } from '../fact-value.ts';
import { layer, load } from './presses.ts';

const DEGREES = 180 / Math.PI;

/** A ball by its diameter and a socket by its radius, as lists of parts mix them. */
function radialFromList() {
  const ballDiameter = 46;
  const socketRadius = 28;
  const radial = socketRadius - ballDiameter / 2;
  return {
    values: {
      ballDiameter: quantity(ballDiameter, 0, 'mm'),
      ballRadius: quantity(ballDiameter / 2, 0, 'mm'),
      socketRadius: quantity(socketRadius, 0, 'mm'),
      radial: quantity(radial, 1, 'mm'),
      diametral: quantity(2 * radial, 0, 'mm'),
      mixed: quantity(ballDiameter - socketRadius, 0, 'mm'),
    },
  };
}

/** A diametral mismatch set beside a radial threshold. */
function sameWord() {
  const diametral = factValue('mismatch-compromise-diametral');
  const threshold = factValue('mismatch-advised-above');
  const radial = diametral / 2;
  return {
    key: radial > threshold ? 'above' : 'below',
    values: {
      diametral: quantity(diametral, 0, 'mm'),
      radial: quantity(radial, 0, 'mm'),
      threshold: quantity(threshold, 1, 'mm'),
      doubled: quantity(2 * threshold, 0, 'mm'),
    },
  };
}

/** The same ball and depth with a larger radius of curvature. */
function depthKept() {
  const [depth, ball] = [4, 24];
  const [near, far] = [25, 29].map((curvatureRadius) => {
    const width = 2 * Math.sqrt(depth * (2 * curvatureRadius - depth));
    return { socket: socketFromDepth({ depth, width }), mismatch: curvatureRadius - ball };
  });
  if (near === undefined || far === undefined) throw new Error('two sockets are compared');
  const [before, after] = [near, far].map(({ socket }) => peakStabilityRatio(socket));
  const isWider = far.socket.width > near.socket.width;
  const isLower = (after ?? NaN) < (before ?? NaN) - 1e-6;
  return {
    key: `${isWider ? 'wider' : 'narrower'}-${isLower ? 'lower' : 'same'}`,
    values: {
      depth: quantity(depth, 0, 'mm'),
      near: quantity(near.mismatch, 0, 'mm'),
      far: quantity(far.mismatch, 0, 'mm'),
      narrowWidth: quantity(near.socket.width, 1, 'mm'),
      wideWidth: quantity(far.socket.width, 1, 'mm'),
      before: quantity(before ?? NaN, 2),
      after: quantity(after ?? NaN, 2),
    },
  };
}

/** One arc on a closer and on a looser pair. */
function arcKept() {
  const arc = 64;
  const ball = 23;
  const [small, large] = [2, 4];
  const half = arc / DEGREES / 2;
  const of = (mismatch: number) => {
    const curvatureRadius = ball + mismatch;
    const socket = sphericalSocket({
      curvatureRadius,
      width: 2 * curvatureRadius * Math.sin(half),
    });
    return { play: rimContactTranslation(socket, ball), peak: peakStabilityRatio(socket) };
  };
  const [one, two] = [of(small), of(large)];
  const isDouble = Math.abs(two.play / one.play - 2) < 1e-9;
  const isSame = Math.abs(two.peak - one.peak) < 1e-9;
  return {
    key: `${isDouble ? 'double' : 'less'}-${isSame ? 'same' : 'lower'}`,
    values: {
      arc: quantity(arc, 0, '°'),
      halfArc: quantity(half * DEGREES, 0, '°'),
      small: quantity(small, 0, 'mm'),
      large: quantity(large, 0, 'mm'),
      playSmall: quantity(one.play, 1, 'mm'),
      playLarge: quantity(two.play, 1, 'mm'),
      peak: quantity(one.peak, 2),
    },
  };
}

/** How many times the peak pressure rises where two curves part four times as fast. */
function fourTimesSharper() {
  const times = 4;
  const [ballRadius, radius] = [24, 26];
  const sharpness = 1 / ballRadius - 1 / radius;
  const at = (socketRadius: number) => hertzContact({ ...layer, ballRadius, socketRadius, load });
  const [one, two] = [at(radius), at(1 / (1 / ballRadius - times * sharpness))];
  const rise = (form: 'thinLayer' | 'hertz'): number =>
    (two[form]?.peakPressure ?? NaN) / (one[form]?.peakPressure ?? NaN);
  return {
    values: {
      times: quantity(times, 0),
      thin: quantity(rise('thinLayer'), 1),
      hertz: quantity(rise('hertz'), 1),
      straight: quantity(times, 0),
    },
  };
}

/** A close and a loose pair, in the middle and slid aside. */
function kinderFit() {
  const [close, loose, aside] = [0.5, 5, 1.5];
  const [ballRadius, width] = [24, 28];
  const under = (mismatch: number, translation: number) => {
    const socket = sphericalSocket({ curvatureRadius: ballRadius + mismatch, width });
    const contact = contactPressure({
      ...{ socket, ballRadius, translation, compressiveLoad: load },
      ...layer,
    });
    if (contact.state === 'too much for the layer') throw new Error('the layer carries the load');
    return contact;
  };
  const isLowerCentred = under(close, 0).peakPressure < under(loose, 0).peakPressure;
  const isLowerAside = under(close, aside).peakPressure < under(loose, aside).peakPressure;
  return {
    key: isLowerCentred && !isLowerAside ? 'middle' : 'always',
    values: {
      close: quantity(close, 1, 'mm'),
      loose: quantity(loose, 0, 'mm'),
      aside: quantity(aside, 1, 'mm'),
      closeCentred: quantity(under(close, 0).peakPressure, 0, 'MPa'),
      looseCentred: quantity(under(loose, 0).peakPressure, 0, 'MPa'),
      atRim: quantity(100 * under(close, aside).rimShare, 0, '%'),
      atRimLoose: quantity(100 * under(loose, aside).rimShare, 0, '%'),
    },
  };
}

/** Two follow-up studies that seem to disagree. */
function twoStudies() {
  const [low, high] = factRange('mismatch-no-effect');
  const border = factValue('mismatch-lucency-below');
  const [least] = factRange('mismatch-of-replacements');
  const counted = (id: string) => quantity(factEntry(id).n ?? NaN, 0);
  return {
    key: least < low && low < border ? 'partly' : 'contradict',
    values: {
      low: quantity(low, 1, 'mm'),
      high: quantity(high, 1, 'mm'),
      border: quantity(border, 1, 'mm'),
      least: quantity(least, 1, 'mm'),
      many: counted('mismatch-no-effect'),
      few: counted('mismatch-lucency-below'),
    },
  };
}

export const answers: Answers = {
  radialFromList,
  sameWord,
  depthKept,
  arcKept,
  fourTimesSharper,
  kinderFit,
  twoStudies,
};
