import { describe } from 'vitest';
import { BONE_POISSON, bones, type BoneName } from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';

/** One pound a cubic foot, g/cm³: 0.45359237 kg over 0.3048³ m³. */
const POUND_A_CUBIC_FOOT = 0.45359237 / 0.3048 ** 3 / 1000;
const grades = [10, 15, 20, 30] as const;
const foam = (grade: (typeof grades)[number]) => bones[`foam grade ${grade}` satisfies BoneName];
const range = (id: string) => ({
  expected: (fact(id, 'low') + fact(id, 'high')) / 2,
  tolerance: (fact(id, 'high') - fact(id, 'low')) / 2,
});
const yieldStrain = (end: 'low' | 'high'): number =>
  fact('foam-yield-strength', end) / fact('foam-modulus', end);

/** Elastic constants of the socket's bone, MPa: across the surface, along it, and what couples them. */
const stiffness = {
  across: fact('socket-bone-modulus-across'),
  along: fact('socket-bone-modulus-along'),
  between: fact('socket-bone-coupling-across'),
  inSurface: fact('socket-bone-coupling-along'),
};

/** Modulus of the grade nearest to a modulus, as a share of it. */
function nearestGrade(modulus: number): number {
  const shares = grades.map((grade) => foam(grade).modulus.value / modulus);
  return shares.reduce((best, share) =>
    Math.abs(Math.log(share)) < Math.abs(Math.log(best)) ? share : best,
  );
}

const checks: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'a foam’s grade is its density in pounds a cubic foot: density over grade, g/cm³',
    sources: ['astm-f1839'],
    compute: () => grades.map((grade) => (foam(grade).density?.value ?? NaN) / grade),
    expected: POUND_A_CUBIC_FOOT,
    tolerance: 0.005 / 10,
    why: 'The units decide; densities are remembered to two decimals.',
  },
  {
    kind: 'band',
    what: 'nominal modulus of the foam of grade 10, MPa, against foams of its density and twice that',
    sources: ['astm-f1839', 'patel-2008'],
    compute: () => foam(10).modulus.value,
    ...range('foam-modulus'),
    why: 'The range measured, over two densities and two lengths of specimen.',
  },
  {
    kind: 'disagreement',
    theory: 'above',
    what: 'nominal modulus of the foam of grade 20, MPa, against the greatest measured at its density',
    sources: ['astm-f1839', 'patel-2008'],
    compute: () => foam(20).modulus.value,
    expected: fact('foam-modulus', 'high'),
    tolerance: 0,
    why:
      'Short cylinders were measured, whose ends give; and they were of another make. A socket on foam as measured lifts by at least a third more ' +
      'than on foam as named.',
  },
  {
    kind: 'disagreement',
    theory: 'above',
    what: 'nominal strength of the foam of grade 20, MPa, against the greatest yield strength measured at its density',
    sources: ['astm-f1839', 'patel-2008'],
    compute: () => foam(20).strength.value,
    expected: fact('foam-yield-strength', 'high'),
    tolerance: 0,
    why: 'They called it yield where the slope had fallen by a few hundredths; the nominal strength is the greatest the foam bears.',
  },
  {
    kind: 'band',
    what: 'strength over modulus of all nominal foams, against the two ends of what was measured',
    sources: ['astm-f1839', 'patel-2008'],
    compute: () => grades.map((grade) => foam(grade).strength.value / foam(grade).modulus.value),
    expected: (yieldStrain('low') + yieldStrain('high')) / 2,
    tolerance: Math.abs(yieldStrain('low') - yieldStrain('high')) / 2,
    why: 'The weakest measured is taken to be the softest, and the strongest the stiffest; then both yield at a few hundredths of strain.',
  },
  {
    kind: 'band',
    what: 'shear modulus of the nominal foams of grades 10, 15 and 20, E / 2(1 + ν), MPa',
    sources: ['astm-f1839', 'thompson-2003'],
    compute: () =>
      ([10, 15, 20] as const).map((grade) => foam(grade).modulus.value / (2 * (1 + BONE_POISSON))),
    ...range('foam-shear-modulus'),
    why: 'The range of four grades measured in torsion; the abstract does not say which.',
  },
  {
    kind: 'band',
    what: 'Poisson’s ratio taken for bone, against what its elastic constants give when it is pressed across the surface',
    sources: ['seliktar-2003'],
    compute: () => BONE_POISSON,
    expected: stiffness.between / (stiffness.along + stiffness.inSurface),
    tolerance: 0.05,
    why: 'The constants scatter by 15 %.',
  },
  {
    kind: 'disagreement',
    theory: 'above',
    what: 'modulus taken for bone across its surface, MPa, against Young’s by its elastic constants with the sides free',
    sources: ['seliktar-2003'],
    compute: () => bones['bone, across the face'].modulus.value,
    expected:
      stiffness.across - (2 * stiffness.between ** 2) / (stiffness.along + stiffness.inSurface),
    tolerance: 0,
    why:
      'The constant in print is that of bone held at its sides. It is used here as Young’s modulus, as the abstract calls it the modulus of a direction: ' +
      'a tenth too stiff.',
  },
  {
    kind: 'band',
    what: 'modulus of the nearest nominal foam over that of bone, along and across its surface',
    sources: ['astm-f1839', 'seliktar-2003'],
    compute: () => [stiffness.along, stiffness.across].map(nearestGrade),
    expected: 1,
    tolerance: 0.5,
    why: 'For either direction there is a grade within half as much again, which is what makes foam of use as a stand-in.',
  },
];

describe('published: bone and the foams that stand for it', () => {
  runChecks(checks);
});
