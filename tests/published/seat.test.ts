import { describe } from 'vitest';
import {
  flatBed,
  keel,
  peg,
  rockingTest,
  solveSeat,
  type SeatElement,
} from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';

const bone = { modulus: fact('socket-bone-modulus-across'), poisson: 0.3 };
const layer = { ...bone, thickness: 10 };
const level = -fact('drawn-component-thickness');
const outline = { kind: 'pear', width: fact('face-lower-width'), height: 35 } as const;

/** A pegged and a keeled component of sizes near those drawn in the lessons. */
const pegs = (
  [
    [0, 9],
    [-5.5, -7],
    [5.5, -7],
  ] as const
).flatMap(([x, y]) => peg({ x, y, diameter: 5, length: 10, kind: 'smooth cemented', bone, level }));
const plate = keel({
  x: 0,
  y: 0,
  length: 20,
  height: 11,
  thickness: 4,
  kind: 'keel cemented',
  bone,
  level,
});

/** The pull, straight out, that a component without a bond under its back withstands, N. */
function pullOut(elements: readonly SeatElement[]): number {
  const load = { force: [0, 0, 100], point: [0, -1.7, 0] } as const;
  return rockingTest({ seat: { elements }, load, cycles: 0 }).greatestLoad;
}

/** By how far the rim opposite the load lifts, mm, under the load of the standard test with the ball near the rim. */
function lift(elements: readonly SeatElement[], share = 1): number {
  const force = share * fact('rocking-test-load');
  return solveSeat({
    elements,
    load: { force: [0, -0.5 * force, -force], point: [0, -12, 0] },
  }).liftOff;
}

const band = (id: string) => ({
  expected: (fact(id, 'low') + fact(id, 'high')) / 2,
  tolerance: (fact(id, 'high') - fact(id, 'low')) / 2,
});

const bed = flatBed(outline, { layer, level });

const checks: readonly PublishedCheck[] = [
  {
    kind: 'band',
    what: 'pull-out of a component with three smooth cemented pegs, N',
    sources: ['raiss-2011'],
    compute: () => pullOut([...bed, ...pegs]),
    ...band('pull-out-pegs'),
    why: 'The range measured. The strength of the kind was chosen near its mean, so this holds the size of the pegs to it.',
  },
  {
    kind: 'band',
    what: 'pull-out of a component with a cemented keel, N',
    sources: ['raiss-2011'],
    compute: () => pullOut([...bed, ...plate]),
    ...band('pull-out-keel'),
    why: 'The range measured, as for the pegs.',
  },
  {
    kind: 'band',
    what: 'modulus of the socket’s bone along its surface, MPa, against foams made to stand in for bone',
    sources: ['patel-2008', 'seliktar-2003'],
    compute: () => fact('socket-bone-modulus-along'),
    ...band('foam-modulus'),
    why: 'Print against print: if bone lay outside the foams’ range, tests on them would say little about bone.',
  },
  {
    kind: 'hard',
    what: 'lift-off on foam over that on bone, stiffness for stiffness',
    sources: ['patel-2008', 'seliktar-2003'],
    compute: () => {
      const on = (modulus: number): number =>
        lift(flatBed(outline, { layer: { ...layer, modulus }, level, isRough: true }));
      return on(fact('foam-modulus', 'high')) / on(bone.modulus);
    },
    expected: fact('socket-bone-modulus-across') / fact('foam-modulus', 'high'),
    tolerance: 1e-6,
    why: 'A bed without pegs lifts in inverse proportion to its modulus: the stiffest foam measured gives about twice the lift of bone.',
  },
  {
    kind: 'band',
    what: 'keel over pegs: lift-off opposite the load of the standard test',
    sources: ['keel-peg-rocking-2006', 'astm-f2028'],
    compute: () =>
      lift([...flatBed(outline, { layer, level, isRough: true }), ...plate]) /
      lift([...flatBed(outline, { layer, level, isRough: true }), ...pegs]),
    expected: 1,
    tolerance: 0.6,
    why:
      'The test found no discernible difference and gave no scatter in its abstract. The sizes of its components are not known ' +
      'either, so only the order of size is held to.',
  },
  {
    kind: 'disagreement',
    theory: 'below',
    what: 'pegs over keel: micromotion under a load at the rim',
    sources: ['voss-2017'],
    compute: () => {
      const rough = flatBed(outline, { layer, level, isRough: true });
      const share = fact('eccentric-load-of-test') / fact('rocking-test-load');
      return lift([...rough, ...pegs], share) / lift([...rough, ...plate], share);
    },
    expected: 1,
    tolerance: 0,
    why:
      'In cadaver shoulders the pegged component moved more, in the rigid model the keeled one does: it has no component that ' +
      'bends, no cement, and a keel of a size chosen here.',
  },
];

describe('published: the socket on its bone', () => {
  runChecks(checks);
});
