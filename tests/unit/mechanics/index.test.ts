import { expect, test } from 'vitest';
import * as mechanics from '../../../sims/mechanics/index.ts';

test('index: the public names, no fewer and no more', () => {
  expect(Object.keys(mechanics).sort()).toStrictEqual([
    'GREATEST_POISSON',
    'contactPressure',
    'elasticStabilityCurve',
    'flatBed',
    'forceOnSocket',
    'foundationModulus',
    'hertzContact',
    'holds',
    'keel',
    'leastThinLayer',
    'peg',
    'pressureField',
    'pullVector',
    'restPosition',
    'restUnderForce',
    'rockingTest',
    'seatMemory',
    'socketAxes',
    'solveSeat',
    'sphericalBed',
    'sumOfForces',
  ]);
});
