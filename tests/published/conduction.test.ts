import { describe } from 'vitest';
import { arrheniusDamage, cem43, conduct, henriques } from '../../sims/mechanics/index.ts';
import { runChecks, type PublishedCheck } from './check.ts';

const DAY = 86_400;
const insulated = { insulated: true } as const;

/** Ground at 20 °C under a surface at −15 °C for 60 days: how deep it freezes, m. */
function frost(): number {
  const { depths, temperatures } = conduct({
    layers: [
      // α = 0.138 mm²/s; the split between k and ρc does not matter here.
      { thickness: 8000, conductivity: 0.138e-3, volumetricHeat: 1e-3, initialTemperature: 20 },
    ],
    boundary: { left: { temperature: -15 }, right: insulated },
    duration: 60 * DAY,
    cell: 10,
    step: DAY / 4,
  });
  const row = temperatures.at(-1) ?? [];
  const thawed = row.findIndex((temperature) => temperature > 0);
  const [above, below] = [row[thawed - 1] ?? NaN, row[thawed] ?? NaN];
  const [from, to] = [depths[thawed - 1] ?? NaN, depths[thawed] ?? NaN];
  return (from + ((to - from) * above) / (above - below)) / 1000;
}

/** Surface of a brass plate of 3 cm in an oven, both sides alike, so half of it. */
function plate(): number {
  const conductivity = 0.11;
  const { faces } = conduct({
    layers: [
      { thickness: 15, conductivity, volumetricHeat: conductivity / 33.9, initialTemperature: 25 },
    ],
    boundary: { left: insulated, right: { film: 80e-6, ambient: 700 } },
    duration: 600,
    cell: 0.5,
    step: 2,
  });
  return faces[1]?.temperatures.at(-1) ?? NaN;
}

const steady = (celsius: number, seconds: number) => ({
  times: [0, seconds],
  temperatures: [celsius, celsius],
});

const handbook: readonly PublishedCheck[] = [
  {
    kind: 'hard',
    what: 'how deep the ground freezes in 60 days, m',
    sources: ['water-main-example', 'carslaw-jaeger-1959'],
    compute: frost,
    expected: 0.677,
    tolerance: 0.002 * 0.677,
    why: 'The error function of a half-space; 0.2 %.',
  },
  {
    kind: 'hard',
    what: 'surface of a brass plate out of the oven, °C',
    sources: ['brass-plate-example'],
    compute: plate,
    expected: 448.2,
    tolerance: 0.002 * 448.2,
    why: 'The printed 445 comes from table values of four digits; the same series unrounded gives 448.2. 0.2 %.',
  },
  {
    kind: 'hard',
    what: 'damage integral of an exercise with A = 3.1e99/s, E = 6.28e5 J/mol at 321.958 K for 248.479 s',
    sources: ['henriques-1947'],
    compute: () =>
      arrheniusDamage(steady(321.958 - 273.15, 248.479), { frequency: 3.1e99, energy: 6.28e5 }),
    expected: 0.9906,
    tolerance: 0.005 * 0.9906,
    why: 'The rate law is Henriques’s, the frequency factor ten times his; 0.5 %; with the gas constant to nine digits it would be 1.3 % more.',
  },
  {
    kind: 'hard',
    what: 'equivalent minutes at 43 °C of one at 47 °C',
    sources: ['sapareto-dewey-1984'],
    compute: () => cem43(steady(47, 60)),
    expected: 16,
    tolerance: 1e-12,
    why: 'Two to the fourth.',
  },
  {
    kind: 'disagreement',
    theory: 'below',
    what: 'Henriques’s integral of the minute at 47 °C that injures bone, against the 1 of a burn',
    sources: ['henriques-1947', 'eriksson-1983'],
    compute: () => arrheniusDamage(steady(47, 60), henriques),
    expected: 1,
    tolerance: 0.9,
    why: 'The constants are of skin, and of a burn right through it; bone shows harm in the microscope far earlier.',
  },
];

describe('conduction and injury by heat', () => runChecks(handbook));
