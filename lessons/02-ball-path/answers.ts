import {
  ballPath,
  climbAt,
  contactAt,
  peakStabilityRatio,
  radialMismatch,
  rimContactTranslation,
  socketFromDepth,
  stabilityRatioAt,
  type SphericalSocket,
} from '../../sims/geometry/index.ts';
import type { Answers } from '../../sims/study/prepare-questions.ts';
import { quantity } from '../../sims/study/quantity.ts';

/** The questions' own cup, ball and press: near the anatomy, round numbers. */
const socket = socketFromDepth({ depth: 4, width: 28 });
const press = 60;
const conforming = socket.curvatureRadius;
/** Balls with a small and a large radial mismatch, mm. */
const snug = conforming - 1;
const loose = conforming - 4;

/** Force from the slope of the path, at the place where the path rises 3 in 10. */
function forceFromSlope() {
  const run = 1;
  const rise = 0.3;
  const place = radialMismatch(socket, loose) * Math.sin(Math.atan2(rise, run));
  const ratio = stabilityRatioAt(socket, loose, place);
  return {
    values: {
      press: quantity(press, 0, 'N'),
      run: quantity(run, 1, 'mm'),
      rise: quantity(rise, 1, 'mm'),
      ratio: quantity(ratio, 1),
      force: quantity(press * ratio, 0, 'N'),
      divided: quantity(press / ratio, 0, 'N'),
    },
  };
}

/** Area under the ratio curve from the middle to dislocation, by trapezoids, mm. */
function areaUnderRatio(shape: SphericalSocket, ballRadius: number): number {
  const rows = ballPath(shape, ballRadius, 4001);
  return rows.reduce((area, row, i) => {
    const before = rows[i - 1];
    if (before === undefined) return 0;
    const run = row.translation - before.translation;
    return area + (run * (row.stabilityRatio + before.stabilityRatio)) / 2;
  }, 0);
}

function areaIsDepth() {
  const exact = areaUnderRatio(socket, conforming);
  const small = areaUnderRatio(socket, loose);
  const isSame = Math.abs(exact - small) < 1e-3 * socket.depth;
  return {
    key: isSame ? 'same' : exact > small ? 'exact' : 'small',
    values: {
      depth: quantity(socket.depth, 0, 'mm'),
      mismatch: quantity(radialMismatch(socket, loose), 0, 'mm'),
      exact: quantity(exact, 2, 'mm'),
      small: quantity(small, 2, 'mm'),
    },
  };
}

/** Place and height of the greatest ratio on the way out, found by looking, not by formula. */
function peakOf(ballRadius: number) {
  const rows = ballPath(socket, ballRadius, 801);
  return rows.reduce((best, row) => (row.stabilityRatio > best.stabilityRatio ? row : best));
}

function peakMoves() {
  const near = peakOf(snug);
  const far = peakOf(loose);
  const isOutward = far.translation > near.translation + 0.01;
  const isAsHigh = Math.abs(far.stabilityRatio - near.stabilityRatio) < 1e-6;
  return {
    key: `${isOutward ? 'outward' : 'stays'}-${isAsHigh ? 'same' : 'lower'}`,
    values: {
      smallMismatch: quantity(radialMismatch(socket, snug), 0, 'mm'),
      largeMismatch: quantity(radialMismatch(socket, loose), 0, 'mm'),
      near: quantity(near.translation, 1, 'mm'),
      far: quantity(far.translation, 1, 'mm'),
      peak: quantity(far.stabilityRatio, 2),
    },
  };
}

function exactFit() {
  const nudge = 0.5;
  const { place } = contactAt(socket, conforming, nudge);
  return {
    key: place === 'rim' ? 'rim' : 'deepest',
    values: {
      nudge: quantity(nudge, 1, 'mm'),
      play: quantity(rimContactTranslation(socket, conforming), 0, 'mm'),
      loosePlay: quantity(rimContactTranslation(socket, loose), 1, 'mm'),
      looseMismatch: quantity(radialMismatch(socket, loose), 0, 'mm'),
    },
  };
}

/** Work to dislocate under a steady press; the slips take the way out for the climb. */
function workToDislocate() {
  const way = socket.width / 2;
  const peakForce = press * peakStabilityRatio(socket);
  return {
    values: {
      press: quantity(press, 0, 'N'),
      depth: quantity(socket.depth, 0, 'mm'),
      width: quantity(socket.width, 0, 'mm'),
      way: quantity(way, 0, 'mm'),
      peakForce: quantity(peakForce, 0, 'N'),
      work: quantity(press * climbAt(socket, loose, way), 0, 'N·mm'),
      pressTimesWay: quantity(press * way, 0, 'N·mm'),
      peakTimesWay: quantity(peakForce * way, 0, 'N·mm'),
    },
  };
}

export const answers: Answers = {
  forceFromSlope,
  areaIsDepth,
  peakMoves,
  exactFit,
  workToDislocate,
};
