import type { Grid } from './conduct-grid.ts';
import { keepWithin, type Ends } from './conduct-limit.ts';
import type { Heating } from './conduct-source.ts';
import { implicitStep } from './conduct-step.ts';

export interface March {
  /** One row for each time, the first as it began */
  readonly rows: readonly Float64Array[];
  readonly released: number;
  readonly left: number;
  readonly right: number;
}

/** Beyond a bound by no more than this share of it counts as on it. */
const ROUNDING = 1e-13;

/**
 * Marches through time in equal steps: each once whole and once in two halves by backward Euler, and from both twice the
 * second less the first, which is right to the second order and damps a jump at once (Lawson and Morris 1978, from
 * memory). Where that leaves the range in which temperatures must lie, the heat beyond it goes to the cells beside.
 */
export function march(grid: Grid, steps: number, step: number, sources: readonly Heating[]): March {
  const { count, volume } = grid;
  const make = (): Float64Array => new Float64Array(count);
  const [whole, first, second] = [make(), make(), make()];
  const [gain, firstGain, secondGain] = [make(), make(), make()];
  const [stepWhole, stepHalf] = [implicitStep(grid, step), implicitStep(grid, step / 2)];
  let [low, high] = startRange(grid);
  let [released, left, right] = [0, 0, 0];
  const rows: Float64Array[] = [grid.initial];
  let before = grid.initial;
  for (let n = 0; n < steps; n++) {
    const middle = (n + 0.5) * step;
    let [rise, fall] = [0, 0];
    for (const { from, to, volumetricHeat, heat } of sources) {
      const [early, late] = [heat(n * step, middle), heat(middle, (n + 1) * step)];
      for (let i = from; i < to; i++) {
        const size = volume[i] ?? 0;
        firstGain[i] = early * size;
        secondGain[i] = late * size;
        gain[i] = (early + late) * size;
        released += (early + late) * size;
      }
      rise = Math.max(rise, (early + late) / volumetricHeat);
      fall = Math.min(fall, (early + late) / volumetricHeat);
    }
    high += rise;
    low += fall;
    stepWhole(before, gain, whole);
    stepHalf(before, firstGain, first);
    stepHalf(first, secondGain, second);
    const row = make();
    const slack = ROUNDING * (Math.abs(low) + Math.abs(high));
    let isWithin = true;
    for (let i = 0; i < count; i++) {
      const value = 2 * (second[i] ?? 0) - (whole[i] ?? 0);
      row[i] = value;
      if (value < low - slack || value > high + slack) isWithin = false;
    }
    const byWhole = endFlows(grid, whole, step);
    const byHalves = [first, second].map((half) => endFlows(grid, half, step / 2));
    const kept = isWithin ? { left: 0, right: 0 } : keepWithin(grid, row, low, high);
    left += 2 * sum(byHalves, 'left') - byWhole.left + kept.left;
    right += 2 * sum(byHalves, 'right') - byWhole.right + kept.right;
    rows.push(row);
    before = row;
  }
  return { rows, released, left, right };
}

/** The temperatures between which all stay as long as no source is at work. */
function startRange({ initial, left, right }: Grid): [low: number, high: number] {
  let [low, high] = [Infinity, -Infinity];
  const take = (temperature: number): void => {
    low = Math.min(low, temperature);
    high = Math.max(high, temperature);
  };
  initial.forEach(take);
  for (const { conductance, temperature } of [left, right]) if (conductance > 0) take(temperature);
  return [low, high];
}

/** Heat that came in through the ends in an implicit step that ended in this row. */
function endFlows({ left, right, count }: Grid, row: Float64Array, step: number): Ends {
  return {
    left: step * left.conductance * (left.temperature - (row[0] ?? 0)),
    right: step * right.conductance * (right.temperature - (row[count - 1] ?? 0)),
  };
}

function sum(flows: readonly Ends[], end: keyof Ends): number {
  return flows.reduce((all, flow) => all + flow[end], 0);
}
