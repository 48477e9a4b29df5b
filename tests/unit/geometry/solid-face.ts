import Module, { type CrossSection, type Manifold, type ManifoldToplevel } from 'manifold-3d';
import { oracleFace, type OracleInput } from './face-oracle.ts';

/**
 * A face as a solid of a geometry kernel: its outline extruded, finely divided, pressed into shape by the definition of
 * the surface in words, and trimmed by a plane where it is cut.
 */
export interface SolidFace {
  /** The bed under the hollow, and the lip's bed round it if there is a lip. */
  readonly solids: readonly Manifold[];
  /** Corners of the triangles that look up, nine numbers each, mm. */
  readonly triangles: Float64Array;
}

let kernel: Promise<ManifoldToplevel> | undefined;

/** The kernel, loaded once. */
export function loadKernel(): Promise<ManifoldToplevel> {
  kernel ??= Module().then((loaded) => {
    loaded.setup();
    return loaded;
  });
  return kernel;
}

const RAYS = 720;
/** Longest edge of a triangle, mm: between its corners a surface of 25 mm radius bulges by 0.0008 mm. */
const FINE = 0.4;
/** Bottom of the solids, below the deepest point, mm. */
const BOTTOM = -3;

export function solidFace({ CrossSection }: ManifoldToplevel, input: OracleInput): SolidFace {
  const { labrum, defect } = input;
  const whole = oracleFace({ ...input, defect: undefined });
  const loop = (inward: number): [number, number][] =>
    Array.from({ length: RAYS }, (_, i) => {
      const angle = (2 * Math.PI * i) / RAYS;
      const distance = whole.ray(angle).edge - inward;
      return [distance * Math.cos(angle), distance * Math.sin(angle)];
    });
  const outer = new CrossSection([loop(0)]);
  const inner = new CrossSection([loop(labrum?.width ?? 0)]);
  // In two parts along the inner edge of the lip, so that no triangle lies across the kink there.
  const parts = labrum === undefined ? [outer] : [inner, outer.subtract(inner)];
  const press = (part: CrossSection): Manifold =>
    part
      .extrude(FINE / 4)
      .refineToLength(FINE)
      .warp((place) => {
        const [x, y, z] = place;
        const { edge, at } = whole.ray(Math.atan2(y, x));
        place[2] = z > 0 ? at(Math.min(1, Math.hypot(x, y) / edge)).z : BOTTOM;
      });
  const solids = parts.map(press).map((solid) => {
    if (defect?.kind !== 'cut') return solid;
    const [cosine, sine] = [Math.cos(defect.direction), Math.sin(defect.direction)];
    const cutAt = whole.ray(defect.direction).edge - defect.depth;
    return solid.trimByPlane([-cosine, -sine, 0], -cutAt);
  });
  return { solids, triangles: Float64Array.from(solids.flatMap(lookingUp)) };
}

function lookingUp(solid: Manifold): readonly number[] {
  const { numProp, vertProperties, triVerts } = solid.getMesh();
  const up: number[] = [];
  for (let t = 0; t < triVerts.length; t += 3) {
    const corner = (k: number): Corner => {
      const v = (triVerts[t + k] ?? 0) * numProp;
      return [vertProperties[v] ?? 0, vertProperties[v + 1] ?? 0, vertProperties[v + 2] ?? 0];
    };
    const [a, b, c] = [corner(0), corner(1), corner(2)];
    const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    if (area > 1e-9) up.push(...a, ...b, ...c);
  }
  return up;
}

type Corner = readonly [x: number, y: number, z: number];

/**
 * Height of the centre of a ball that rests on the triangles with its centre over (cx, cy): the highest of its contacts
 * with their faces, edges and corners, all tried. −Infinity where it reaches none.
 */
export function restingHeight(
  { triangles: p }: SolidFace,
  r: number,
  cx: number,
  cy: number,
): number {
  let highest = -Infinity;
  const onEdge = (i: number, j: number): void => {
    const [x, y, z] = [(p[i] ?? 0) - cx, (p[i + 1] ?? 0) - cy, p[i + 2] ?? 0];
    const [ex, ey, ez] = [(p[j] ?? 0) - cx - x, (p[j + 1] ?? 0) - cy - y, (p[j + 2] ?? 0) - z];
    const length = Math.hypot(ex, ey);
    if (length === 0) return;
    const foot = -(x * ex + y * ey) / length;
    const room = r * r - ((x * ey - y * ex) / length) ** 2;
    if (room <= 0) return;
    const slope = ez / length;
    const on = foot + (Math.sqrt(room) * slope) / Math.hypot(1, slope);
    const at = Math.min(length, Math.max(0, on));
    const under = room - (at - foot) ** 2;
    if (under >= 0) highest = Math.max(highest, z + slope * at + Math.sqrt(under));
  };
  for (let t = 0; t < p.length; t += 9) {
    const [ax, ay, az] = [(p[t] ?? 0) - cx, (p[t + 1] ?? 0) - cy, p[t + 2] ?? 0];
    if (ax * ax + ay * ay > (r + FINE) ** 2) continue;
    const [bx, by, bz] = [
      (p[t + 3] ?? 0) - cx - ax,
      (p[t + 4] ?? 0) - cy - ay,
      (p[t + 5] ?? 0) - az,
    ];
    const [dx, dy, dz] = [
      (p[t + 6] ?? 0) - cx - ax,
      (p[t + 7] ?? 0) - cy - ay,
      (p[t + 8] ?? 0) - az,
    ];
    const area = bx * dy - by * dx;
    const gx = (bz * dy - by * dz) / area;
    const gy = (bx * dz - bz * dx) / area;
    const secant = Math.hypot(1, gx, gy);
    const [qx, qy] = [(r * gx) / secant - ax, (r * gy) / secant - ay];
    const u = (qx * dy - qy * dx) / area;
    const v = (bx * qy - by * qx) / area;
    if (u >= 0 && v >= 0 && u + v <= 1) {
      highest = Math.max(highest, az + gx * qx + gy * qy + r / secant);
      continue;
    }
    onEdge(t, t + 3);
    onEdge(t + 3, t + 6);
    onEdge(t + 6, t);
  }
  return highest;
}
