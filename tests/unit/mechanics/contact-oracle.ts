import type { SphericalSocket } from '../../../sims/geometry/index.ts';

/** Sums over a spherical socket, taken place by place: the definition, with no idea of where the patch ends. */
export interface DenseSums {
  /** ∫ p n dA: up and toward the middle, N. */
  readonly up: number;
  readonly inward: number;
  readonly area: number;
  readonly total: number;
  /** ∫ ½ k h² dA, N mm. */
  readonly energy: number;
  readonly deepest: number;
  /** Of `total`, within 1 mm of the rim along the surface. */
  readonly upNearRim: number;
}

/**
 * A rigid ball with its centre at (x, 0, z) in a layer of bed modulus k: penetration along the normal of each of
 * `count` × `2 count` places of the cap.
 */
export function denseSums(
  socket: SphericalSocket,
  ballRadius: number,
  [cx, cz]: readonly [x: number, z: number],
  k: number,
  count = 600,
): DenseSums {
  const { curvatureRadius: R, halfArc } = socket;
  const sums = { up: 0, inward: 0, area: 0, total: 0, energy: 0, deepest: 0, upNearRim: 0 };
  for (let i = 0; i < count; i++) {
    const theta = (halfArc * (i + 0.5)) / count;
    const [sine, cosine] = [Math.sin(theta), Math.cos(theta)];
    const dA = (R * R * sine * halfArc * Math.PI) / (count * count);
    const isNearRim = (halfArc - theta) * R < 1;
    // One half of the face; the other is its mirror image.
    for (let j = 0; j < count; j++) {
      const psi = (Math.PI * (j + 0.5)) / count;
      const [nx, ny, nz] = [-sine * Math.cos(psi), -sine * Math.sin(psi), cosine];
      const [dx, dy, dz] = [cx + R * nx, R * ny, cz - R + R * nz];
      const b = nx * dx + ny * dy + nz * dz;
      const under = b * b + ballRadius ** 2 - (dx * dx + dy * dy + dz * dz);
      if (under <= 0) continue;
      const h = Math.sqrt(under) - b;
      if (h <= 0) continue;
      sums.up += 2 * k * h * nz * dA;
      sums.inward += 2 * k * h * -nx * dA;
      sums.area += 2 * dA;
      sums.total += 2 * k * h * dA;
      sums.energy += k * h * h * dA;
      sums.deepest = Math.max(sums.deepest, h);
      if (isNearRim) sums.upNearRim += 2 * k * h * nz * dA;
    }
  }
  return sums;
}
