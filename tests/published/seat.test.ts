import { describe } from 'vitest';
import { flatBed, rockingTest, solveSeat, type SeatElement } from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';
import { bedOn, keelOn, pegsOn } from './seats.ts';

const bone = { modulus: fact('socket-bone-modulus-across'), poisson: 0.3 };
const bed = bedOn(bone);
const rough = bedOn(bone, true);
const pegs = pegsOn(bone);
const plate = keelOn(bone);

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

/** A square footing of 7 m that can only press, 2,687.5 kN on it 4,200 / 2,687.5 m off its middle: the edge, kPa. */
function footingEdge(): number {
  const elements = flatBed(
    { kind: 'rectangle', width: 7, height: 7 },
    { layer: { thickness: 1, modulus: 1, poisson: 0 }, level: 0, elements: 8000 },
  );
  const load = { force: [0, 0, -2687.5], point: [0, -4200 / 2687.5, 0] } as const;
  const { displacement, rotation } = solveSeat({ elements, load });
  return rotation[0] * 3.5 - displacement[2];
}

const checks: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'handbook: pressure under the edge of a footing loaded beyond its kern, 2P / 3L(B/2 − e), kPa',
    sources: [],
    compute: footingEdge,
    expected: (2 * 2687.5) / (3 * 7 * (3.5 - 4200 / 2687.5)),
    tolerance: 0.132,
    why: 'A thousandth, for the rows of elements.',
  },
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
      const on = (modulus: number): number => lift(bedOn({ ...bone, modulus }, true));
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
    compute: () => lift([...rough, ...plate]) / lift([...rough, ...pegs]),
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
