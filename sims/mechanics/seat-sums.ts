import { FREEDOMS, pullAt, stiffnessAt, type Springs } from './seat-springs.ts';

/** The six parts of the force that is left once the springs have answered. */
export function forceLeft(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  side: number[][],
  q: Float64Array,
  gaps: Float64Array,
): Float64Array {
  const left = Float64Array.from(load);
  for (let i = 0; i < springs.count; i++) {
    const pull = pullAt(springs, i, gaps[i] ?? 0, slips[i] ?? 0);
    if (pull === 0) continue;
    const row = FREEDOMS * i;
    for (let k = 0; k < FREEDOMS; k++) {
      left[k] = (left[k] ?? 0) - pull * (springs.gapRows[row + k] ?? 0);
    }
  }
  for (let k = 0; k < FREEDOMS; k++) left[k] = (left[k] ?? 0) - dot(side[k] ?? [], q);
  return left;
}

/** The stiffness of what acts at these gaps, 6 × 6. */
export function stiffnessMatrix(
  springs: Springs,
  slips: Float64Array,
  side: number[][],
  gaps: Float64Array,
): number[][] {
  const matrix = side.map((row) => [...row]);
  for (let i = 0; i < springs.count; i++) {
    const stiffness = stiffnessAt(springs, i, gaps[i] ?? 0, slips[i] ?? 0);
    if (stiffness > 0) addOuter(matrix, springs.gapRows, FREEDOMS * i, stiffness);
  }
  return mirrored(matrix);
}

/** The part of the stiffness that the elements which grip across their normals have. */
export function sideMatrix(springs: Springs, grips: Uint8Array): number[][] {
  const matrix = Array.from({ length: FREEDOMS }, () => new Array<number>(FREEDOMS).fill(0));
  for (let i = 0; i < springs.count; i++) {
    const stiffness = springs.sideStiffness[i] ?? 0;
    if (stiffness === 0 || grips[i] === 0) continue;
    addOuter(matrix, springs.sideRows, 2 * FREEDOMS * i, stiffness);
    addOuter(matrix, springs.sideRows, 2 * FREEDOMS * i + FREEDOMS, stiffness);
  }
  return mirrored(matrix);
}

/** Adds stiffness · row rowᵀ to the upper triangle. */
function addOuter(matrix: number[][], rows: Float64Array, at: number, stiffness: number): void {
  for (let j = 0; j < FREEDOMS; j++) {
    const by = stiffness * (rows[at + j] ?? 0);
    const row = matrix[j];
    if (row === undefined || by === 0) continue;
    for (let k = j; k < FREEDOMS; k++) row[k] = (row[k] ?? 0) + by * (rows[at + k] ?? 0);
  }
}

function mirrored(matrix: number[][]): number[][] {
  return matrix.map((row, j) => row.map((value, k) => (k < j ? (matrix[k]?.[j] ?? 0) : value)));
}

/** Gap of every element over its home. */
export function gapsAt(springs: Springs, coordinates: Float64Array, into: Float64Array): void {
  project(springs, coordinates, into);
  const { homes, count } = springs;
  for (let i = 0; i < count; i++) into[i] = (into[i] ?? 0) - (homes[i] ?? 0);
}

/** row · coordinates of every element. */
export function project(springs: Springs, coordinates: Float64Array, into: Float64Array): void {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = coordinates;
  const { gapRows, count } = springs;
  for (let i = 0, at = 0; i < count; i++, at += FREEDOMS) {
    into[i] =
      a * (gapRows[at] ?? 0) +
      b * (gapRows[at + 1] ?? 0) +
      c * (gapRows[at + 2] ?? 0) +
      d * (gapRows[at + 3] ?? 0) +
      e * (gapRows[at + 4] ?? 0) +
      f * (gapRows[at + 5] ?? 0);
  }
}

export function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let k = 0; k < FREEDOMS; k++) sum += (a[k] ?? 0) * (b[k] ?? 0);
  return sum;
}

export function norm(vector: Float64Array): number {
  return Math.hypot(...vector);
}
