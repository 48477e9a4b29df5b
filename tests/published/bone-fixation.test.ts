import { describe } from 'vitest';
import { boneOf, rockingTest, solveSeat, type SeatElement } from '../../sims/mechanics/index.ts';
import { fact, runChecks, type PublishedCheck } from './check.ts';
import { bedOn, hybridOn, level, outline, pegsOn } from './seats.ts';

const foam = boneOf('foam grade 20');
const press = fact('rocking-test-load');
/** Near the rim, mm, and what a hollow asks for there as a share of the press: teaching values. */
const REACH = 12;
const SHEAR = 0.4;

const atRim = (side: 1 | -1, force = press) => ({
  force: [0, side * SHEAR * force, -force] as const,
  point: [0, side * REACH, 0] as const,
});

/** How far the back slides to and fro along the foam between the two rims, mm. */
function slide(elements: readonly SeatElement[]): number {
  const [up, down] = ([1, -1] as const).map((side) => {
    const { displacement, rotation } = solveSeat({ elements, load: atRim(side) });
    return displacement[1] - rotation[0] * level;
  });
  return (up ?? NaN) - (down ?? NaN);
}

/** Where the back lifts most, as a share of the way from the middle to the rim opposite the load. */
function whereItLifts(elements: readonly SeatElement[], side: 1 | -1): number {
  const answers = solveSeat({ elements, load: atRim(side) }).elements;
  const lifts = answers.map(({ gap }, i) => (elements[i]?.normal[2] === 1 ? gap : -Infinity));
  const at = elements[lifts.indexOf(Math.max(...lifts))]?.position[1] ?? NaN;
  return (-side * at) / (outline.height / 2);
}

const rough = bedOn(foam, true);
const pegged = [...rough, ...pegsOn(foam)];
const measured = (id: string) => ({ expected: fact(id), tolerance: 2 * fact(id, 'sd') });
const SCATTER =
  'Two standard deviations of five. Grade of foam, load and place of the sensors stand on pages that were not seen, ' +
  'and the components were not ours: only the size can be held to.';

/** Chance of counts as far apart as these by chance alone (Fisher’s exact test, both tails). */
function fisher([a, m]: readonly [number, number], [b, n]: readonly [number, number]): number {
  const choose = (whole: number, part: number): number =>
    Array.from({ length: part }, (_, i) => (whole - i) / (i + 1)).reduce((x, y) => x * y, 1);
  const chance = (k: number): number =>
    (choose(m, k) * choose(n, a + b - k)) / choose(m + n, a + b);
  const here = chance(a);
  return Array.from({ length: a + b + 1 }, (_, k) => (k > m || a + b - k > n ? 0 : chance(k)))
    .filter((each) => each <= here * (1 + 1e-9))
    .reduce((x, y) => x + y, 0);
}

const lucent = { keel: [9, 23], pegs: [1, 20] } as const;
const atRisk = { pegs: [6, 50], keel: [4, 50] } as const;
const hundredths = ([part, whole]: readonly [number, number]): number => (100 * part) / whole;
const HALF = 0.5;

const rates = (
  [
    ['lucency-early-keel', lucent.keel, 'gartsman-2005'],
    ['lucency-early-pegs', lucent.pegs, 'gartsman-2005'],
    ['loosening-risk-pegs', atRisk.pegs, 'throckmorton-2010'],
    ['loosening-risk-keel', atRisk.keel, 'throckmorton-2010'],
  ] as const
).map(([id, count, source]): PublishedCheck => ({
  kind: 'hard',
  what: `${id}: the rate by its count, ${count[0]} of ${count[1]}, %`,
  sources: [source],
  compute: () => hundredths(count),
  expected: fact(id),
  tolerance: HALF,
  why: 'Printed as whole hundredths.',
}));

const checks: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'the rocking test measures lift at the rim opposite the load: where the model lifts most, share of the way there',
    sources: ['astm-f2028'],
    compute: () => ([1, -1] as const).map((side) => whereItLifts(pegged, side)),
    expected: 1,
    tolerance: 0.05,
    why: 'Rows of elements end a little inside the edge. In a rigid component the far rim is the place that lifts most.',
  },
  {
    kind: 'hard',
    what: 'under the load of the standard test a rigid component on foam, pegged, comes to rest at both rims: outcome of ten cycles',
    sources: ['astm-f2028', 'rocking-test-service'],
    compute: () =>
      rockingTest({ seat: { elements: pegged }, load: atRim(-1), cycles: 10 }).cycles.length,
    expected: 10,
    tolerance: 0,
    why: 'The test goes on for a hundred thousand cycles and ends with a component that still sits.',
  },
  {
    kind: 'band',
    what: 'slide of a cemented pegged component between the rims, mm',
    sources: ['pegged-ingrowth-rocking-2016'],
    compute: () => slide(pegged),
    ...measured('component-translation-cemented'),
    why: SCATTER,
  },
  {
    kind: 'band',
    what: 'slide of a component whose pegs are pressed in, mm',
    sources: ['pegged-ingrowth-rocking-2016'],
    compute: () => slide([...rough, ...pegsOn(foam, 'fluted press-fit')]),
    ...measured('component-translation-press-fit'),
    why: SCATTER,
  },
  {
    kind: 'band',
    what: 'slide of a component with a fluted peg amid cemented ones, mm',
    sources: ['pegged-ingrowth-rocking-2016'],
    compute: () => slide([...rough, ...hybridOn(foam)]),
    ...measured('component-translation-hybrid'),
    why: SCATTER,
  },
  {
    kind: 'disagreement',
    theory: 'below',
    what: 'slide of the hybrid over that of the cemented component',
    sources: ['pegged-ingrowth-rocking-2016'],
    compute: () => slide([...rough, ...hybridOn(foam)]) / slide(pegged),
    expected: fact('component-translation-hybrid') / fact('component-translation-cemented'),
    tolerance: 0,
    why:
      'Here a fourth peg can only help, and cement is told from a press fit by its hold along the peg alone. In the test the ' +
      'pressed peg sat in a hole that gave before it bore.',
  },
  ...rates,
  {
    kind: 'disagreement',
    theory: 'below',
    what: 'early lines, keel against pegs: P by Fisher’s exact test of the counts, against P in print',
    sources: ['gartsman-2005'],
    compute: () => fisher(lucent.keel, lucent.pegs),
    expected: 0.026,
    tolerance: 0.0005,
    why:
      'The abstract does not name its test; the counts alone are further from chance than it says. On either the difference ' +
      'is more than chance is commonly allowed.',
  },
  {
    kind: 'hard',
    what: 'at risk of loosening, pegs against keel: P by Fisher’s exact test of the counts',
    sources: ['throckmorton-2010'],
    compute: () => fisher(atRisk.pegs, atRisk.keel),
    expected: 0.74,
    tolerance: 0.005,
    why: 'Printed to two decimals.',
  },
];

describe('published: rocking and holding fast', () => {
  runChecks(checks);
});
