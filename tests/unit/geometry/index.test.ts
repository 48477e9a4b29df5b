import { expect, test } from 'vitest';
import * as geometry from '../../../sims/geometry/index.ts';

test('index: the public names, no fewer and no more', () => {
  expect(Object.keys(geometry).sort()).toStrictEqual([
    'balanceStabilityAngle',
    'ballPath',
    'climbAt',
    'contactAt',
    'frictionAngle',
    'isFlat',
    'peakStabilityRatio',
    'radialMismatch',
    'rimContactTranslation',
    'socketFromDepth',
    'sphericalSocket',
    'stabilityRatioAt',
  ]);
});
