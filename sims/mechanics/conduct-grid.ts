import { inRange, positive } from '../geometry/numeric.ts';
import type { ConductBoundary, ConductLayer, ConductQuestion } from './conduct-types.ts';

/** Layers cut into cells. Heat capacities and resistances for each mm² of layer, or for each mm of length of shells. */
export interface Grid {
  readonly count: number;
  /** mm from the left end */
  readonly depths: Float64Array;
  /** J/K */
  readonly capacity: Float64Array;
  /** mm³ */
  readonly volume: Float64Array;
  /** From a cell's middle to its left face and its right face, K/W */
  readonly toLeft: Float64Array;
  readonly toRight: Float64Array;
  /** From one cell to the next, W/K; one less than there are cells */
  readonly conductance: Float64Array;
  readonly initial: Float64Array;
  /** For each layer its first cell; after the last, the count */
  readonly starts: readonly number[];
  readonly left: GridEnd;
  readonly right: GridEnd;
}

/** An end, joined to a temperature. */
export interface GridEnd {
  /** From the end cell's middle, W/K; 0 for an insulated end */
  readonly conductance: number;
  readonly temperature: number;
  /** The share of the fall from the end cell to that temperature that lies within the cell */
  readonly share: number;
}

/** As many cells as a machine keeps in mind with ease. */
const MOST_CELLS = 100_000;
/** A layer of a whole number of cells is not cut once more by rounding. */
const WHOLE = 1e-9;

/** @throws RangeError naming what is not allowed */
export function gridOf({ layers, boundary, cell, innerRadius }: ConductQuestion): Grid {
  if (layers.length === 0) throw new RangeError('layers is empty; allowed: one or more');
  positive('cell', cell, 'mm');
  if (innerRadius !== undefined) inRange('innerRadius', innerRadius, 0, Infinity, 'mm');
  const counts = layers.map((layer, i) => {
    checkLayer(layer, i);
    return Math.max(1, Math.ceil((layer.thickness / cell) * (1 - WHOLE)));
  });
  const count = counts.reduce((sum, n) => sum + n, 0);
  inRange('number of cells', count, 1, MOST_CELLS, '');
  const make = (): Float64Array => new Float64Array(count);
  const [depths, capacity, volume, toLeft, toRight] = [make(), make(), make(), make(), make()];
  const initial = make();
  const starts: number[] = [];
  let [i, start] = [0, 0];
  layers.forEach(({ thickness, conductivity, volumetricHeat, initialTemperature }, l) => {
    starts.push(i);
    const n = counts[l] ?? 1;
    for (let k = 0; k < n; k++, i++) {
      const [from, to] = [start + (thickness * k) / n, start + (thickness * (k + 1)) / n];
      const middle = (from + to) / 2;
      depths[i] = middle;
      volume[i] = volumeOf(innerRadius, from, to);
      capacity[i] = (volume[i] ?? 0) * volumetricHeat;
      toLeft[i] = resistance(innerRadius, from, middle) / conductivity;
      toRight[i] = resistance(innerRadius, middle, to) / conductivity;
      initial[i] = initialTemperature;
    }
    start += thickness;
  });
  const conductance = Float64Array.from(
    { length: count - 1 },
    (_, j) => 1 / ((toRight[j] ?? 0) + (toLeft[j + 1] ?? 0)),
  );
  const area = (depth: number): number => areaOf(innerRadius, depth);
  return {
    count,
    depths,
    capacity,
    volume,
    toLeft,
    toRight,
    conductance,
    initial,
    starts: [...starts, count],
    left: endOf('left', boundary.left, area(0), toLeft[0] ?? 0),
    right: endOf('right', boundary.right, area(start), toRight[count - 1] ?? 0),
  };
}

function checkLayer(layer: ConductLayer, i: number): void {
  const of = (field: string): string => `${field} of layer ${i + 1}`;
  positive(of('thickness'), layer.thickness, 'mm');
  positive(of('conductivity'), layer.conductivity, 'W/(mm·K)');
  positive(of('volumetricHeat'), layer.volumetricHeat, 'J/(mm³·K)');
  inRange(of('initialTemperature'), layer.initialTemperature, -Infinity, Infinity, '°C or K');
}

/** Of a face, mm²; for a shell for each mm of its length. */
function areaOf(innerRadius: number | undefined, depth: number): number {
  return innerRadius === undefined ? 1 : 2 * Math.PI * (innerRadius + depth);
}

function volumeOf(innerRadius: number | undefined, from: number, to: number): number {
  return areaOf(innerRadius, (from + to) / 2) * (to - from);
}

/** Against heat between two depths, for a conductivity of 1; without end from the axis of a shell. */
function resistance(innerRadius: number | undefined, from: number, to: number): number {
  if (innerRadius === undefined) return to - from;
  return Math.log((innerRadius + to) / (innerRadius + from)) / (2 * Math.PI);
}

function endOf(side: string, boundary: ConductBoundary, area: number, within: number): GridEnd {
  const finite = (name: string, value: number): number =>
    inRange(`${name} of the ${side} boundary`, value, -Infinity, Infinity, '°C or K');
  if ('temperature' in boundary) {
    const temperature = finite('temperature', boundary.temperature);
    return { conductance: 1 / within, temperature, share: 1 };
  }
  if ('film' in boundary) {
    inRange(`film of the ${side} boundary`, boundary.film, 0, Infinity, 'W/(mm²·K)');
    const temperature = finite('ambient', boundary.ambient);
    const through = boundary.film * area;
    // No heat passes without a film, nor at an axis, where the resistance has no end.
    const conductance = through === 0 ? 0 : 1 / (1 / through + within);
    return { conductance, temperature, share: conductance === 0 ? 0 : conductance * within };
  }
  return { conductance: 0, temperature: 0, share: 0 };
}
