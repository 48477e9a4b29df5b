/** A surface of triangles: three numbers a corner, mm; three corners a triangle. */
export interface MeshArrays {
  readonly positions: readonly number[];
  readonly indices: readonly number[];
  /** Share of the greatest climb at each corner, where the surface is coloured by it. */
  readonly shares: readonly number[];
}

export type Spot = readonly [x: number, y: number, z: number];

export const nothing: MeshArrays = { positions: [], indices: [], shares: [] };

/** Joins neighbouring rows of corners, the last to the first; a null row leaves a gap. */
export function bands(rows: readonly (readonly Spot[] | null)[]): MeshArrays {
  const positions: number[] = [];
  const indices: number[] = [];
  const starts = rows.map((row) => {
    const start = positions.length / 3;
    for (const spot of row ?? []) positions.push(...spot);
    return start;
  });
  rows.forEach((row, i) => {
    const next = (i + 1) % rows.length;
    const other = rows[next];
    if (row === null || other === null || other === undefined) return;
    const a = starts[i] ?? 0;
    const b = starts[next] ?? 0;
    for (let j = 0; j + 1 < row.length; j++) {
      indices.push(a + j, a + j + 1, b + j, a + j + 1, b + j + 1, b + j);
    }
  });
  return { positions, indices, shares: [] };
}
