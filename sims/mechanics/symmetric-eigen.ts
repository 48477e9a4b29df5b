/** Eigenvalues of a symmetric matrix, and the eigenvectors as rows. */
export interface SymmetricEigen {
  readonly values: readonly number[];
  readonly vectors: readonly (readonly number[])[];
}

const MOST_SWEEPS = 40;

/**
 * Eigenvalues and eigenvectors of a small symmetric matrix, by Jacobi's rotations: slow, and exact even where the matrix
 * is singular, which a stiffness matrix is as soon as something comes loose.
 *
 * @param matrix square and symmetric, row by row; it is not changed
 */
export function symmetricEigen(matrix: readonly (readonly number[])[]): SymmetricEigen {
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const v = matrix.map((_, i) => matrix.map((_row, j) => (i === j ? 1 : 0)));
  const at = (rows: number[][], i: number, j: number): number => rows[i]?.[j] ?? 0;
  const scale = Math.max(...a.map((row) => Math.max(...row.map(Math.abs))), 0);
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    let off = 0;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) off = Math.max(off, Math.abs(at(a, p, q)));
    }
    if (off <= scale * 1e-16) break;
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        const apq = at(a, p, q);
        if (apq === 0) continue;
        const theta = (at(a, q, q) - at(a, p, p)) / (2 * apq);
        const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        const c = 1 / Math.sqrt(t * t + 1);
        const s = t * c;
        for (const row of a) rotate(row, p, q, c, s);
        rotateRows(a, p, q, c, s);
        rotateRows(v, p, q, c, s);
      }
    }
  }
  return { values: a.map((_, i) => at(a, i, i)), vectors: v };
}

function rotate(row: number[], p: number, q: number, c: number, s: number): void {
  const [rp = 0, rq = 0] = [row[p], row[q]];
  row[p] = c * rp - s * rq;
  row[q] = s * rp + c * rq;
}

function rotateRows(rows: number[][], p: number, q: number, c: number, s: number): void {
  const [rp = [], rq = []] = [rows[p], rows[q]];
  for (let k = 0; k < rp.length; k++) {
    const [x = 0, y = 0] = [rp[k], rq[k]];
    rp[k] = c * x - s * y;
    rq[k] = s * x + c * y;
  }
}
