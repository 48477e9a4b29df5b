import { performance } from 'node:perf_hooks';
import { peakStabilityRatio } from '../../sims/geometry/index.ts';
import type { WorldMaker } from '../../sims/physics/ball-world.ts';
import { STEP_SECONDS, UPDATES_PER_STEP } from '../../sims/physics/constants.ts';
import { createMatterWorld } from '../../sims/physics/matter-world.ts';
import { createPushScene } from '../../sims/physics/push-scene.ts';
import { describeCup, gridOfCups, pushToTheEnd, type GridCup } from '../unit/physics/cups.ts';
import { createPlanckWorld } from './physics-planck.ts';
import { loadRapier } from './physics-rapier.ts';
import { median, rounded, table } from './table.ts';

/** Cups of the grid that are pushed: every third, so that three engines are done in a minute. */
const EVERY = 3;
const FRICTIONS = [0, 0.1, 0.3];
const TIMED_STEPS = 360;
const SETTLING_UPDATES = 960;
/** Cups shown one by one: every so many of those pushed. */
const SHOWN_EVERY = 3;

interface Measured {
  readonly cup: GridCup;
  readonly friction: number;
  readonly theory: number;
  /** null where the engine came to no slip. */
  readonly ratio: number | null;
}

/**
 * The scene of the push in matter-js, as the site runs it, beside the same scene, pieces, forces and step in two other
 * engines with those engines' own contacts and friction.
 *
 * @returns two tables: cost and accuracy of each engine; ratios cup by cup
 */
export async function physicsBench(): Promise<string> {
  const makers: Readonly<Record<string, WorldMaker>> = {
    'matter-js': createMatterWorld,
    planck: settled(createPlanckWorld),
    rapier: settled(await loadRapier()),
  };
  const cups = gridOfCups().filter((_, i) => i % EVERY === 0);
  const results = Object.entries(makers).map(([name, maker]) => ({
    name,
    cost: stepCost(maker, cups),
    measured: FRICTIONS.flatMap((friction) => cups.map((cup) => measure(maker, cup, friction))),
  }));
  const summary = table(
    `Push scene: ${cups.length} cups, step ${rounded(STEP_SECONDS * 1000, 2)} ms of ${UPDATES_PER_STEP} engine updates; error of the slip ratio against tan(β + λ)`,
    [
      'engine',
      'µs a step',
      ...FRICTIONS.flatMap((mu) => [`μ ${mu}: mean %`, 'worst %', 'no slip']),
    ],
    results.map(({ name, cost, measured }) => [
      name,
      rounded(cost),
      ...FRICTIONS.flatMap((mu) => errorsOf(measured.filter(({ friction }) => friction === mu))),
    ]),
  );
  const shown = (measured: readonly Measured[]): readonly Measured[] =>
    measured.filter(({ friction }, i) => friction !== 0.3 && i % SHOWN_EVERY === 0);
  const [first] = results;
  const ratios = table(
    'Slip ratio, cup by cup',
    ['cup', 'μ', 'theory', ...results.map(({ name }) => name)],
    shown(first?.measured ?? []).map(({ cup, friction, theory }, i) => [
      describeCup(cup),
      friction,
      theory.toFixed(4),
      ...results.map(({ measured }) => shown(measured)[i]?.ratio?.toFixed(4) ?? '–'),
    ]),
  );
  return summary + ratios;
}

/** Worlds whose ball has been pressed in for a while: these engines let it rattle at first, which a push would take for a slip. */
function settled(maker: WorldMaker): WorldMaker {
  return (plan) => {
    const world = maker(plan);
    const action = { force: { x: 0, z: -50 }, compressiveLoad: 50, friction: 0, damping: 100 };
    for (let i = 0; i < SETTLING_UPDATES; i += 1) world.update(action);
    return world;
  };
}

/** Median time of a step during a push, µs, over cups with one contact and with many. */
function stepCost(maker: WorldMaker, cups: readonly GridCup[]): number {
  const costs = cups.map(({ socket, ballRadius, load }) => {
    const scene = createPushScene({ socket, ballRadius, compressiveLoad: load }, maker);
    scene.startPush();
    const from = performance.now();
    for (let i = 0; i < TIMED_STEPS; i += 1) scene.step();
    return ((performance.now() - from) * 1000) / TIMED_STEPS;
  });
  return median(costs);
}

function measure(maker: WorldMaker, cup: GridCup, friction: number): Measured {
  const { socket, ballRadius, load } = cup;
  const options = { socket, ballRadius, compressiveLoad: load, friction };
  const theory = peakStabilityRatio(socket, friction);
  const { reading } = pushToTheEnd(createPushScene(options, maker));
  return { cup, friction, theory, ratio: reading.slipRatio };
}

/** Mean and worst error in percent, and how many pushes gave no ratio. */
function errorsOf(measured: readonly Measured[]): readonly [number, number, number] {
  const errors = measured.flatMap(({ theory, ratio }) =>
    ratio === null ? [] : [100 * Math.abs(ratio / theory - 1)],
  );
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  return [rounded(mean, 2), rounded(Math.max(...errors), 2), measured.length - errors.length];
}

if (import.meta.main) console.log(await physicsBench());
