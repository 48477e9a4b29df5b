import { bands, type MeshArrays, type Spot } from './bands.ts';

const TUBE_SIDES = 6;

/** A thin tube round a line, so that it is as thick as it should be on every screen. */
export function tubeMesh(spots: readonly Spot[], radius: number): MeshArrays {
  const rows = spots.map((spot, i): readonly Spot[] => {
    const before = spots[Math.max(0, i - 1)] ?? spot;
    const after = spots[Math.min(spots.length - 1, i + 1)] ?? spot;
    const along = unit([after[0] - before[0], after[1] - before[1], after[2] - before[2]]);
    const aside = unit(cross(along, [0, 0, 1]));
    const up = cross(aside, along);
    return Array.from({ length: TUBE_SIDES + 1 }, (_, j) => {
      const angle = (2 * Math.PI * j) / TUBE_SIDES;
      const across = radius * Math.cos(angle);
      const above = radius * Math.sin(angle);
      return [
        spot[0] + aside[0] * across + up[0] * above,
        spot[1] + aside[1] * across + up[1] * above,
        spot[2] + aside[2] * across + up[2] * above,
      ];
    });
  });
  return bands([...rows, null]);
}

function cross(a: Spot, b: Spot): Spot {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(a: Spot): Spot {
  const length = Math.hypot(...a);
  return length > 0 ? [a[0] / length, a[1] / length, a[2] / length] : [1, 0, 0];
}
