import { cementHeat, conduct, materials } from '../../sims/mechanics/index.ts';
import { erf } from '../unit/mechanics/conduct-oracle.ts';
import { median, rounded, table } from './table.ts';
import { times } from './times.ts';

/** Milliseconds: half an hour of setting at 0.1 mm, so that a slider stays live. */
const GOAL = 30;
const RUNS = 30;
const WARM_UP = 10;

const heatOf = (name: keyof typeof materials) => ({
  conductivity: materials[name].conductivity.value,
  volumetricHeat: materials[name].volumetricHeat.value,
});
const setting = {
  initialTemperatures: { polymer: 20, cement: 20, bone: 37 },
  kinetics: { totalHeat: 0.15, peakTime: 300 },
  properties: {
    polymer: heatOf('polyethylene'),
    cement: heatOf('bone cement'),
    bone: heatOf('cancellous bone'),
  },
  boneDepth: 25,
} as const;

/** How long the heat of setting takes to solve for, as a share of the goal, and how exact a coarser one is. */
export function cementBench(): string {
  const reference = cementHeat({ ...setting, ...flat(2), cell: 0.05, step: 0.25 }).peakAtBone;
  const rows = (
    [
      ['flat, 2 mm of cement', flat(2), 0.1, 1],
      ['flat, 6 mm of cement', flat(6), 0.1, 1],
      ['round, 2 mm of cement', { ...flat(2), shape: 'round' }, 0.1, 1],
      ['flat, 2 mm, coarser', flat(2), 0.2, 2],
      ['flat, 2 mm, finer', flat(2), 0.05, 0.5],
    ] as const
  ).map(([name, mantle, cell, step]) => {
    const run = () => cementHeat({ ...setting, ...mantle, cell, step });
    const { depths, times: moments } = run().conduction;
    const middle = median(times(RUNS, WARM_UP, run));
    const isSame = mantle.cementThickness === 2 && !('shape' in mantle);
    return [
      name,
      depths.length * moments.length,
      rounded(middle, 1),
      rounded(middle / GOAL, 2),
      isSame ? rounded(run().peakAtBone - reference, 4) : '–',
    ] as const;
  });
  return [
    table(
      `Cement: 30 min of setting, goal ${GOAL} ms at 0.1 mm`,
      ['mantle', 'temperatures', 'median ms', 'of goal', 'peak off by °C'],
      rows,
    ),
    table(
      'Conduction alone: a jump of 60 °C between two half-spaces after 100 s, against the closed form',
      ['step, s', 'median ms', 'greatest error, °C'],
      [10, 1, 0.1].map((step) => {
        const run = () => jump(step);
        return [step, rounded(median(times(RUNS, WARM_UP, run)), 2), rounded(run(), 5)];
      }),
    ),
  ].join('');
}

function flat(cementThickness: number): { cementThickness: number; polymerThickness: number } {
  return { cementThickness, polymerThickness: 2 };
}

/** Bone at 37 °C touches polyethylene at 97 °C: the greatest error in either. */
function jump(step: number): number {
  const insulated = { insulated: true } as const;
  const [bone, plastic] = [heatOf('cancellous bone'), heatOf('polyethylene')];
  const thickness = 30;
  const { depths, temperatures } = conduct({
    layers: [
      { ...bone, thickness, initialTemperature: 37 },
      { ...plastic, thickness, initialTemperature: 97 },
    ],
    boundary: { left: insulated, right: insulated },
    duration: 100,
    cell: 0.1,
    step,
  });
  const pull = (one: typeof bone): number => Math.sqrt(one.conductivity * one.volumetricHeat);
  const between = (pull(bone) * 37 + pull(plastic) * 97) / (pull(bone) + pull(plastic));
  const off = Array.from(depths, (depth, i) => {
    const [side, begun] = depth < thickness ? [bone, 37] : [plastic, 97];
    const width = 2 * Math.sqrt((side.conductivity / side.volumetricHeat) * 100);
    const exact = between + (begun - between) * erf(Math.abs(depth - thickness) / width);
    return Math.abs((temperatures.at(-1)?.[i] ?? NaN) - exact);
  });
  return Math.max(...off);
}
