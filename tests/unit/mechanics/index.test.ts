import { expect, test } from 'vitest';
import * as mechanics from '../../../sims/mechanics/index.ts';

test('index: the public names, no fewer and no more', () => {
  expect(Object.keys(mechanics).sort()).toStrictEqual([
    'BONE_POISSON',
    'GREATEST_POISSON',
    'boneNames',
    'boneOf',
    'boneWithModulus',
    'bones',
    'contactPressure',
    'corticalModulus',
    'elasticStabilityCurve',
    'flatBed',
    'forceOnSocket',
    'foundationModulus',
    'hertzContact',
    'holds',
    'keel',
    'leastThinLayer',
    'materials',
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
