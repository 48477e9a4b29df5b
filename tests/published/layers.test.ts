import { describe } from 'vitest';
import {
  bilayerBending,
  bimetalCurvature,
  dundurs,
  materials,
  shearLag,
  type ElasticMaterial,
  type MaterialName,
} from '../../sims/mechanics/index.ts';
import { runChecks, type PublishedCheck } from './check.ts';

/*
 * Pairs of materials of joint replacement. A table of Dundurs’ parameters for pairs in print was looked for and could not
 * be read; the numbers were computed by hand from the closed form, to four places.
 */
const cobalt: ElasticMaterial = { youngsModulus: 220_000, poissonRatio: 0.29 };
const titanium: ElasticMaterial = { youngsModulus: 114_000, poissonRatio: 0.33 };
const cement: ElasticMaterial = { youngsModulus: 2500, poissonRatio: 0.33 };
const polyethylene: ElasticMaterial = { youngsModulus: 900, poissonRatio: 0.46 };

const pairs: readonly PublishedCheck[] = (
  [
    ['cobalt–chromium on polyethylene', cobalt, 0.9905, 0.0723],
    ['bone cement on polyethylene', cement, 0.4216, -0.0207],
    ['titanium alloy on polyethylene', titanium, 0.9823, 0.0712],
  ] as const
).flatMap(([pair, first, alpha, beta]) =>
  (
    [
      ['alpha', alpha],
      ['beta', beta],
    ] as const
  ).map(([part, expected]): PublishedCheck => ({
    kind: 'hard',
    what: `${part} of ${pair}`,
    sources: ['dundurs-1969'],
    compute: () => dundurs(first, polyethylene)[part],
    expected,
    tolerance: 5e-5,
    why: 'The closed form by hand, rounded to four places.',
  })),
);

const names = Object.keys(materials) as MaterialName[];
const elastic = (name: MaterialName): ElasticMaterial => ({
  youngsModulus: materials[name].youngsModulus.value,
  poissonRatio: materials[name].poissonRatio.value,
});
const everyPair = names.flatMap((first) =>
  names.map((second) => dundurs(elastic(first), elastic(second))),
);

/* Schmauder and Meyer 1992, beginning: |α| ≤ 1, and α/4 − 1/4 ≤ β ≤ α/4 + 1/4 in plane strain. */
const bounds: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'α of every pair of the table of materials',
    sources: ['schmauder-meyer-1992'],
    compute: () => everyPair.map(({ alpha }) => alpha),
    expected: 0,
    tolerance: 1,
    why: 'The bounds of every pair of real materials.',
  },
  {
    kind: 'hard',
    what: 'β − α/4 of every pair of the table of materials',
    sources: ['schmauder-meyer-1992'],
    compute: () => everyPair.map(({ alpha, beta }) => beta - alpha / 4),
    expected: 0,
    tolerance: 0.25,
    why: 'The bounds of every pair of real materials in plane strain.',
  },
];

/** x [coth x + ((1 − ψ)/(1 + ψ)) tanh x], x = ωL/2, as the form is printed. */
function printedPeak(overlap: number, ratio: number): number {
  const omega = Math.sqrt((1000 / 0.2) * (1 / 140_000) * (1 + 1 / ratio));
  const x = (omega * overlap) / 2;
  return x * (1 / Math.tanh(x) + (Math.abs(1 - ratio) / (1 + ratio)) * Math.tanh(x));
}

function peakOf(overlap: number, ratio: number): number {
  return shearLag({
    overlap,
    adherends: [
      { modulus: 70_000, thickness: 2 },
      { modulus: 70_000 * ratio, thickness: 2 },
    ],
    adhesive: { shearModulus: 1000, thickness: 0.2 },
    load: 100,
    width: 10,
  }).peakToMean;
}

const volkersen: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'peak over mean of two 2 mm aluminium plates, 25 mm of overlap, glued 0.2 mm thick',
    sources: ['volkersen-1938'],
    compute: () => peakOf(25, 1),
    expected: 3.349,
    tolerance: 5e-4,
    why: 'The closed form by hand, rounded to three places.',
  },
  {
    kind: 'hard',
    what: 'peak over mean against the form as it is printed, equal plates and unequal ones',
    sources: ['volkersen-1938'],
    compute: () =>
      [5, 25, 60].flatMap((overlap) =>
        [1, 0.1, 7].map((ratio) => peakOf(overlap, ratio) / printedPeak(overlap, ratio)),
      ),
    expected: 1,
    tolerance: 1e-12,
    why: 'The same form, otherwise written.',
  },
];

/** κh over the mismatch, for equal thickness and n = E₁/E₂. */
const bent = (n: number): number =>
  2 * bimetalCurvature({ thicknesses: [1, 1], moduli: [1000 * n, 1000], mismatchStrain: 1 });

const bimetal: readonly PublishedCheck[] = (
  [
    [1, 1.5],
    [2, 1.4545],
    [0.5, 1.4545],
    [10, 0.9959],
  ] as const
).map(([n, expected]) => ({
  kind: 'hard',
  what: `κh/Δε of a bimetal strip of equal thickness, moduli ${n} to 1`,
  sources: ['timoshenko-1925'],
  compute: () => bent(n),
  expected,
  tolerance: 5e-5,
  why: 'The closed form by hand, rounded to four places.',
}));

/** A timber 140 × 400 mm with a steel plate 200 × 8 mm on top under 30 kN·m. */
const flitch = bilayerBending({
  layers: [
    { thickness: 400, modulus: 12_500, width: 140 },
    { thickness: 8, modulus: 200_000, width: 200 },
  ],
  moment: 30e6,
});
const transformed: readonly PublishedCheck[] = (
  [
    ['timber, pressed at its top', () => -flitch.stresses[0].top, 2.76, 0.005],
    ['timber, pulled at its bottom', () => flitch.stresses[0].bottom, 5.36, 0.005],
    ['steel, pressed at its top', () => -flitch.stresses[1].top, 46.8, 0.05],
  ] as const
).map(([what, compute, expected, tolerance]) => ({
  kind: 'hard',
  what: `greatest stress, MPa: ${what}`,
  sources: ['transformed-section-example'],
  compute,
  expected,
  tolerance,
  why: 'An exercise with its solution, rounded to three figures.',
}));

describe('layers: pairs of materials', () => {
  runChecks([...pairs, ...bounds]);
});
describe('layers: shear along a joint', () => {
  runChecks(volkersen);
});
describe('layers: bent strips', () => {
  runChecks([...bimetal, ...transformed]);
});
