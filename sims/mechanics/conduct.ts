import { inRange, positive } from '../geometry/numeric.ts';
import { gridOf, type Grid } from './conduct-grid.ts';
import { march } from './conduct-march.ts';
import { heatings } from './conduct-source.ts';
import type { ConductLayer, ConductQuestion, Conduction, FaceHistory } from './conduct-types.ts';

/** As many temperatures as are kept. */
const MOST_TEMPERATURES = 20_000_000;
/** A duration of a whole number of steps is not cut once more by rounding. */
const WHOLE = 1e-9;

/**
 * Conduction of heat through layers, in one dimension and through time.
 *
 * Finite volumes: no heat is lost or made (`heat` adds up to rounding). The step in time may have any length: it never
 * leaves the range of the temperatures it began with and never rings. Errors shrink with the square of cell and step. Touching layers share one temperature,
 * there is no film between them. Properties do not change with temperature.
 *
 * @param question.layers mm, W/(mm·K), J/(mm³·K), °C or K, sources W/mm³, from left to right
 * @param question.boundary `{ temperature }`, `{ insulated: true }` or `{ film, ambient }` with W/(mm²·K), at each end
 * @param question.duration s
 * @param question.cell greatest cell, mm
 * @param question.step greatest step, s
 * @param question.innerRadius mm, for shells round an axis
 * @returns `temperatures[time][depth]` at `times` and `depths`, and those of every face
 * @throws RangeError naming the argument, its value and what is allowed; also for more than 20 million temperatures
 *
 * Derivation: Fourier’s law; energy balance of each cell; Lawson–Morris extrapolation of backward Euler in time.
 */
export function conduct(question: ConductQuestion): Conduction {
  const grid = gridOf(question);
  positive('duration', question.duration, 's');
  positive('step', question.step, 's');
  const steps = Math.max(1, Math.ceil((question.duration / question.step) * (1 - WHOLE)));
  inRange('number of temperatures', grid.count * (steps + 1), 1, MOST_TEMPERATURES, '');
  const step = question.duration / steps;
  const { rows, released, left, right } = march(grid, steps, step, heatings(question.layers, grid));
  return {
    depths: grid.depths,
    times: Float64Array.from(rows, (_, n) => n * step),
    temperatures: rows,
    faces: facesOf(question.layers, grid, rows),
    heat: { released, entered: { left, right }, stored: storedIn(grid, rows) },
  };
}

function facesOf(
  layers: readonly ConductLayer[],
  grid: Grid,
  rows: readonly Float64Array[],
): readonly FaceHistory[] {
  const { count, starts, left, right, toLeft, toRight } = grid;
  const through = (of: (row: Float64Array) => number): Float64Array => Float64Array.from(rows, of);
  const toward = (value: number, end: Grid['left']): number =>
    value + end.share * (end.temperature - value);
  let depth = 0;
  return [
    { depth, temperatures: through((row) => toward(row[0] ?? NaN, left)) },
    ...layers.slice(0, -1).map(({ thickness }, l) => {
      depth += thickness;
      const after = starts[l + 1] ?? 0;
      const [a, b] = [toRight[after - 1] ?? 0, toLeft[after] ?? 0];
      return {
        depth,
        temperatures: through(
          (row) => ((row[after - 1] ?? NaN) * b + (row[after] ?? NaN) * a) / (a + b),
        ),
      };
    }),
    {
      depth: depth + (layers.at(-1)?.thickness ?? 0),
      temperatures: through((row) => toward(row[count - 1] ?? NaN, right)),
    },
  ];
}

function storedIn({ count, capacity }: Grid, rows: readonly Float64Array[]): number {
  const [first, last] = [rows[0], rows.at(-1)];
  let stored = 0;
  for (let i = 0; i < count; i++) {
    stored += (capacity[i] ?? 0) * ((last?.[i] ?? 0) - (first?.[i] ?? 0));
  }
  return stored;
}
