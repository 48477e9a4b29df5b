import type { Grid } from './conduct-grid.ts';

/** One step of a length that does not change, from `before` to `after`, with `gain` J of heat given to each cell. */
export type ImplicitStep = (before: Float64Array, gain: Float64Array, after: Float64Array) => void;

/**
 * Backward Euler: (C + hL) T₁ = C T₀ + Q. The matrix has one row for each cell and three entries in a row; it is taken
 * apart once. Its inverse has no entry below 0, so no step, however long, leaves the range of the temperatures it began
 * with.
 */
export function implicitStep(grid: Grid, step: number): ImplicitStep {
  const { count, capacity, conductance, left, right } = grid;
  const last = count - 1;
  const off = new Float64Array(count);
  const inverse = new Float64Array(count);
  const upper = new Float64Array(count);
  // What ties a cell to its own past and to all before it. Sums only: nothing cancels, however long the step.
  let held = step * left.conductance;
  for (let i = 0; i < count; i++) {
    off[i] = i < last ? step * (conductance[i] ?? 0) : 0;
    const toAfter = i < last ? (off[i] ?? 0) : step * right.conductance;
    held += capacity[i] ?? 0;
    inverse[i] = 1 / (held + toAfter);
    upper[i] = (off[i] ?? 0) * (inverse[i] ?? 0);
    held *= upper[i] ?? 0;
  }
  const fromLeft = step * left.conductance * left.temperature;
  const fromRight = step * right.conductance * right.temperature;
  return (before, gain, after) => {
    let swept = fromLeft;
    for (let i = 0; i < count; i++) {
      const end = i === last ? fromRight : 0;
      const row = (capacity[i] ?? 0) * (before[i] ?? 0) + (gain[i] ?? 0) + end;
      const solved = (row + swept) * (inverse[i] ?? 0);
      after[i] = solved;
      swept = (off[i] ?? 0) * solved;
    }
    for (let i = last - 1; i >= 0; i--) {
      after[i] = (after[i] ?? 0) + (upper[i] ?? 0) * (after[i + 1] ?? 0);
    }
  };
}
