import type { OutlineCurve } from './outline.ts';

/** Distance from the middle to the outline in a direction, mm, and how it changes with the direction, mm/rad. */
export interface PolarRadius {
  readonly radius: number;
  readonly slope: number;
}

/** A step this small (rad) of the solver below is rounding. */
const SOLVED = 1e-14;

/** Where the ray from the middle in direction `angle` (rad from +x toward +y) meets the outline. */
export function polarRadius(curve: OutlineCurve, angle: number): PolarRadius {
  const { breadth, halfHeight, skew, fullness } = curve;
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  if (breadth === halfHeight && skew === 0 && fullness === 0) return { radius: breadth, slope: 0 };
  let tau = Math.atan2(sine * breadth, cosine * halfHeight);
  let before = tau - 1;
  let after = tau + 1;
  let x = 0;
  let y = 0;
  let dx = 0;
  let dy = 0;
  for (let i = 0; i < 60; i++) {
    const s = Math.sin(tau);
    const c = Math.cos(tau);
    const shape = 1 - skew * s + fullness * s * s;
    x = breadth * c * shape;
    y = halfHeight * s;
    dx = breadth * (c * c * (2 * fullness * s - skew) - s * shape);
    dy = halfHeight * c;
    const turn = y * cosine - x * sine;
    if (turn > 0) after = tau;
    else before = tau;
    const step = turn / (dy * cosine - dx * sine);
    if (Math.abs(step) < SOLVED) break;
    const next = tau - step;
    // Newton's step, or halving where it would leave the bracket.
    tau = next > before && next < after ? next : (before + after) / 2;
  }
  const radius = Math.hypot(x, y);
  return { radius, slope: (radius * (x * dx + y * dy)) / (x * dy - y * dx) };
}

/** The outline's polar radius at every half degree from 0 to 360°, both included. */
export interface PolarTable {
  readonly radius: Float64Array;
  /** Change of the radius with the direction, mm/rad. */
  readonly slope: Float64Array;
}

export const POLAR_STEPS = 720;

export function polarTable(curve: OutlineCurve): PolarTable {
  const table = {
    radius: new Float64Array(POLAR_STEPS + 1),
    slope: new Float64Array(POLAR_STEPS + 1),
  };
  for (let i = 0; i <= POLAR_STEPS; i++) {
    const { radius, slope } = polarRadius(curve, (2 * Math.PI * i) / POLAR_STEPS);
    table.radius[i] = radius;
    table.slope[i] = slope;
  }
  return table;
}
