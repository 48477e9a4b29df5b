import { peakStabilityRatio, sphericalSocket } from '../../sims/geometry/index.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { keyOf } from '../../sims/study/prediction.ts';
import { quantity } from '../../sims/study/quantity.ts';
import { factValue } from '../fact-value.ts';
import {
  BACK,
  bone,
  cut,
  faceOf,
  first,
  FORWARD,
  FORWARD_AND_DOWN,
  gainOfTenth,
  oneRadius,
  ratioAfterCut,
  ratioAt,
  rigidLoss,
  sameDepth,
  TENTH,
  UP,
  worn,
} from './cups.ts';

/** A face cut from one sphere: the rim near in one direction, far in another. */
function nearRim() {
  const curvatureRadius = 35;
  const near = 14;
  const far = 18;
  const toward = (away: number): number =>
    peakStabilityRatio(sphericalSocket({ curvatureRadius, width: 2 * away }));
  return {
    values: {
      radius: quantity(curvatureRadius, 0, 'mm'),
      near: quantity(near, 0, 'mm'),
      far: quantity(far, 0, 'mm'),
      ratio: quantity(toward(near), 2),
      sine: quantity(near / curvatureRadius, 2),
      farRatio: quantity(toward(far), 2),
    },
  };
}

/** The radius from top to bottom used for every direction, set beside the mean bone. */
function onePicture() {
  const guess = ratioAt(oneRadius, FORWARD);
  const found = ratioAt(bone, FORWARD);
  return {
    key: guess > found ? 'high' : guess < found ? 'low' : 'right',
    values: { guess: quantity(guess, 2), found: quantity(found, 2) },
  };
}

/** A ratio after a straight cut; the slips are the ratio taken in proportion, and the rim left where it was. */
function cutForward() {
  const before = 0.36;
  const halfWidth = 14;
  const gone = 5;
  return {
    values: {
      before: quantity(before, 2),
      halfWidth: quantity(halfWidth, 0, 'mm'),
      gone: quantity(gone, 0, 'mm'),
      left: quantity(halfWidth - gone, 0, 'mm'),
      after: quantity(ratioAfterCut(before, halfWidth, gone), 2),
      ofWhole: quantity(ratioAfterCut(before, 2 * halfWidth, gone), 2),
      goneShare: quantity((before * gone) / halfWidth, 2),
    },
  };
}

/** Where else a cut at the front is felt, read from the map of the mean bone before and after. */
function elsewhere() {
  const loss = (bearing: number): number => 1 - ratioAt(worn, bearing) / ratioAt(bone, bearing);
  const beside = loss(FORWARD_AND_DOWN);
  const away = Math.max(loss(UP), loss(BACK));
  const isFelt = beside > 0.01;
  return {
    key: isFelt ? (away > 0.01 ? 'everywhere' : 'beside') : 'nowhere',
    values: {
      cut: quantity(cut, 0, 'mm'),
      forward: quantity(100 * loss(FORWARD), 0, '%'),
      beside: quantity(100 * beside, 0, '%'),
      up: quantity(ratioAt(worn, UP), 2),
    },
  };
}

/** What the rigid model and the laboratory lose with the lip. */
function lipLost() {
  return {
    values: {
      rigid: quantity(100 * rigidLoss, 0, '%'),
      measured: quantity(factValue('stability-loss-without-labrum'), 0, '%'),
      bare: quantity(ratioAt(faceOf('bone'), UP), 2),
    },
  };
}

/** One size up: a tenth wider on the same curve; beside it, the lesson's wider dish of the same depth. */
function oneSizeUp() {
  const after = (1 + gainOfTenth) * first.ratio;
  const options = [
    { id: 'more', value: after },
    { id: 'same', value: first.ratio },
    { id: 'less', value: sameDepth.ratio },
  ];
  const wider = (1 + TENTH) * first.socket.width;
  const { curvatureRadius } = first.socket;
  return {
    key: keyOf(options, peakStabilityRatio(sphericalSocket({ curvatureRadius, width: wider }))),
    values: {
      radius: quantity(curvatureRadius, 0, 'mm'),
      width: quantity(first.socket.width, 0, 'mm'),
      wider: quantity(wider, 1, 'mm'),
      before: quantity(first.ratio, 2),
      after: quantity(after, 2),
    },
  };
}

export const answers: Answers = {
  nearRim,
  onePicture,
  cutForward,
  elsewhere,
  lipLost,
  oneSizeUp,
};
