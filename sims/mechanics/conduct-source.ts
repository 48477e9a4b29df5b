import { inRange } from '../geometry/numeric.ts';
import type { Grid } from './conduct-grid.ts';
import type { ConductLayer, HeatSource } from './conduct-types.ts';

/** A layer that gives off heat. */
export interface Heating {
  /** Its cells, the last not included */
  readonly from: number;
  readonly to: number;
  /** J/(mm³·K) */
  readonly volumetricHeat: number;
  /** Heat given off from one time to another, J/mm³ */
  readonly heat: (start: number, end: number) => number;
}

export function heatings(
  layers: readonly ConductLayer[],
  { starts }: Pick<Grid, 'starts'>,
): readonly Heating[] {
  return layers.flatMap(({ source, volumetricHeat }, l) => {
    if (source === undefined) return [];
    const name = `heat of the source of layer ${l + 1}`;
    return {
      from: starts[l] ?? 0,
      to: starts[l + 1] ?? 0,
      volumetricHeat,
      heat: (start, end) =>
        inRange(name, integral(source, start, end), -Infinity, Infinity, 'J/mm³'),
    };
  });
}

const GAUSS = Math.sqrt(3 / 5) / 2;

/** By Gauss’s three points. */
function integral(source: HeatSource, start: number, end: number): number {
  const length = end - start;
  if (typeof source === 'number') return source * length;
  const at = (part: number): number => source(start + part * length);
  return (length * (5 * at(0.5 - GAUSS) + 8 * at(0.5) + 5 * at(0.5 + GAUSS))) / 18;
}
