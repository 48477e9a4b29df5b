import { expect, test } from 'vitest';
import * as geometry from '../../../sims/geometry/index.ts';

test('index: the public names, no fewer and no more', () => {
  expect(Object.keys(geometry).sort()).toStrictEqual([
    'balanceStabilityAngle',
    'ballPath',
    'climbAt',
    'contactAt',
    'directionMap',
    'face',
    'faceArea',
    'frictionAngle',
    'isFlat',
    'isOnFace',
    'pathOverFace',
    'peakStabilityRatio',
    'profilePath',
    'radialMismatch',
    'rimContactTranslation',
    'rimLine',
    'rimPoint',
    'socketFromDepth',
    'sphericalSocket',
    'stabilityRatioAt',
    'surfaceHeight',
    'surfaceSlope',
  ]);
});
