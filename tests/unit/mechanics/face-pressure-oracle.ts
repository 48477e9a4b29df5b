import { oracleFace, type OracleInput } from '../geometry/face-oracle.ts';

/** Sums over a face, cell by cell. */
export interface DenseFaceSums {
  /** ∫ p n dA on the ball, N: x anterior, y superior, z out of the socket. */
  readonly force: readonly [x: number, y: number, z: number];
  readonly area: number;
  readonly energy: number;
  readonly deepest: number;
  /** Of the z force, in cells whose middle lies within 1 mm of the rim. */
  readonly upNearRim: number;
}

/**
 * A rigid ball in a face laid out from its definition in words: cells between rays and shares, each with the normal of its
 * own four corners, and the penetration along that normal by its definition.
 */
export function denseFaceSums(
  input: OracleInput,
  ballRadius: number,
  [cx, cy, cz]: readonly [x: number, y: number, z: number],
  k: number,
  rays = 720,
  shares = 200,
): DenseFaceSums {
  const { ray } = oracleFace(input, 1, 1);
  let [fx, fy, fz, area, energy, deepest, upNearRim] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < rays; i++) {
    const middle = (2 * Math.PI * (i + 0.5)) / rays;
    const turn = Math.PI / rays;
    const whole = ray(middle);
    const ahead = ray(middle + 1e-5);
    const behind = ray(middle - 1e-5);
    for (let j = 0; j < shares; j++) {
      const rho = whole.edge * ((j + 0.5) / shares);
      const [dx, dy] = [cx - rho * Math.cos(middle), cy - rho * Math.sin(middle)];
      if (dx * dx + dy * dy > ballRadius ** 2) continue;
      // Along the ray by difference, around it by turning a little and staying at the same distance.
      const [p, q] = [whole.at(j / shares), whole.at((j + 1) / shares)];
      const a = ahead.at(rho / ahead.edge);
      const b = behind.at(rho / behind.edge);
      const [ux, uy, uz] = [q.x - p.x, q.y - p.y, q.z - p.z];
      const scale = turn / 1e-5;
      const [vx, vy, vz] = [(a.x - b.x) * scale, (a.y - b.y) * scale, (a.z - b.z) * scale];
      const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
      const dA = Math.sqrt(nx * nx + ny * ny + nz * nz);
      const spot = whole.at((j + 0.5) / shares);
      const dz = cz - spot.z;
      const along = (nx * dx + ny * dy + nz * dz) / dA;
      const under = along * along + ballRadius ** 2 - (dx * dx + dy * dy + dz * dz);
      const h = under > 0 ? Math.sqrt(under) - along : 0;
      if (!(h > 0)) continue;
      fx += k * h * nx;
      fy += k * h * ny;
      fz += k * h * nz;
      area += dA;
      energy += 0.5 * k * h * h * dA;
      deepest = Math.max(deepest, h);
      if (whole.edge - rho < 3 && distanceToRim(ray, middle, spot) < 1) upNearRim += k * h * nz;
    }
  }
  return { force: [fx, fy, fz], area, energy, deepest, upNearRim };
}

type Spot = ReturnType<ReturnType<ReturnType<typeof oracleFace>['ray']>['at']>;

/** To the nearest of places on the rim about this direction. Near enough for a margin of a millimetre. */
function distanceToRim(
  ray: ReturnType<typeof oracleFace>['ray'],
  middle: number,
  { x, y, z }: Spot,
): number {
  let least = Infinity;
  for (let i = -30; i <= 30; i++) {
    const rim = ray(middle + (i * Math.PI) / 360).at(1);
    least = Math.min(least, Math.hypot(rim.x - x, rim.y - y, rim.z - z));
  }
  return least;
}
