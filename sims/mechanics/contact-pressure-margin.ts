import type { Face } from '../geometry/index.ts';
import { signChange } from '../geometry/sign-change.ts';
import { goTo, type BallOverFace, type Ray } from './contact-pressure-spot.ts';

/** mm */
const PLACE_TOLERANCE = 1e-4;

/**
 * Where on a ray the margin of a face begins: the distance (mm) from the middle beyond which the rim is nearer than
 * `margin`. Over a millimetre the surface is as good as straight, so the straight distance stands for the way along it.
 */
export function marginOnRay(ball: BallOverFace, ray: Ray, margin: number): number {
  const near = rimNear(ball, ray, 4 * margin);
  const clear = (distance: number): number => {
    goTo(ball, ray, distance, distance > ray.lip);
    const { x, y, z } = ball.spot;
    return Math.sqrt(nearest(near, x, y, z)) - margin;
  };
  const start = Math.max(0, ray.end - 3 * margin);
  const atStart = clear(start);
  if (atStart <= 0) return start;
  return signChange(clear, start, atStart, ray.end, -margin, PLACE_TOLERANCE);
}

/** Ends of the straight bits between neighbouring places of the rim that come near a ray's end, six numbers each. */
function rimNear(ball: BallOverFace, ray: Ray, reach: number): readonly number[] {
  const { rim }: Face = ball.face;
  goTo(ball, ray, ray.end, ray.lip < ray.end);
  const { x, y } = ball.spot;
  const bits: number[] = [];
  for (const { first, last } of rim.pieces) {
    for (let i = first; i < last; i++) {
      const [ax, ay, az] = [rim.x[i] ?? 0, rim.y[i] ?? 0, rim.z[i] ?? 0];
      if ((ax - x) ** 2 + (ay - y) ** 2 > reach ** 2) continue;
      bits.push(ax, ay, az, rim.x[i + 1] ?? 0, rim.y[i + 1] ?? 0, rim.z[i + 1] ?? 0);
    }
  }
  return bits;
}

/** Square of the distance from a place to the nearest of these bits. */
function nearest(bits: readonly number[], x: number, y: number, z: number): number {
  let least = Infinity;
  for (let i = 0; i < bits.length; i += 6) {
    const ax = bits[i] as number;
    const ay = bits[i + 1] as number;
    const az = bits[i + 2] as number;
    const dx = (bits[i + 3] as number) - ax;
    const dy = (bits[i + 4] as number) - ay;
    const dz = (bits[i + 5] as number) - az;
    const square = dx * dx + dy * dy + dz * dz;
    const along = square > 0 ? ((x - ax) * dx + (y - ay) * dy + (z - az) * dz) / square : 0;
    const part = Math.max(0, Math.min(1, along));
    const px = ax + part * dx - x;
    const py = ay + part * dy - y;
    const pz = az + part * dz - z;
    least = Math.min(least, px * px + py * py + pz * pz);
  }
  return least;
}
