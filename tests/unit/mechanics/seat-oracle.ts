import type { SeatElement, SeatLoad } from '../../../sims/mechanics/index.ts';

/*
 * An independent way to the same rest: the potential energy written out from the definition, element by element, and
 * brought to its minimum by a general quasi-Newton method (BFGS with a halving line search) that knows nothing of active
 * sets. Slow, and only for energies that are convex: no tangential stiffness on elements without tension.
 */

type Six = readonly number[];

/** Gap, and displacement squared across the normal, of a point that moves by u + θ × p. */
export function movementOf({ position, normal }: SeatElement, q: Six) {
  const [x, y, z] = position;
  const [ux = 0, uy = 0, uz = 0, rx = 0, ry = 0, rz = 0] = q;
  const moved = [ux + ry * z - rz * y, uy + rz * x - rx * z, uz + rx * y - ry * x] as const;
  const size = Math.hypot(...normal);
  const gap = (moved[0] * normal[0] + moved[1] * normal[1] + moved[2] * normal[2]) / size;
  const across = moved[0] ** 2 + moved[1] ** 2 + moved[2] ** 2 - gap ** 2;
  return { gap, across: Math.max(0, across), moved };
}

/** Energy stored in one element, N mm. */
function stored(element: SeatElement, q: Six): number {
  const { gap, across } = movementOf(element, q);
  const { normalStiffness: k, tangentialStiffness, tension, strength = 0, crush } = element;
  const side = (tangentialStiffness * across) / 2;
  const give = (crush ?? Infinity) / k;
  if (crush !== undefined && gap < -give) return crush * (-gap - give / 2) + side;
  if (gap <= 0 || tension === 'elastic') return (k * gap * gap) / 2 + side;
  if (tension === 'none') return side;
  const reach = strength / k;
  return gap <= reach ? (k * gap * gap) / 2 + side : strength * (gap - reach / 2) + side;
}

/** Energy less the work of the load, N mm. */
export function potential(elements: readonly SeatElement[], load: SeatLoad, q: Six): number {
  const { moved } = movementOf(
    {
      position: load.point,
      normal: [0, 0, 1],
      normalStiffness: 0,
      tangentialStiffness: 0,
      tension: 'none',
    },
    q,
  );
  const work = load.force.reduce((sum, part, i) => sum + part * (moved[i] ?? 0), 0);
  return elements.reduce((sum, element) => sum + stored(element, q), 0) - work;
}

/** Coordinates of least potential, found by BFGS from rest; turns are counted in `arm` mm. */
export function leastPotential(
  elements: readonly SeatElement[],
  load: SeatLoad,
  arm = 15,
): readonly number[] {
  const unscaled = (s: Six): Six => s.map((part, i) => (i < 3 ? part : part / arm));
  const energy = (s: Six): number => potential(elements, load, unscaled(s));
  const slope = (s: Six): number[] =>
    s.map((_, i) => {
      const step = 1e-6;
      const at = (by: number): number => energy(s.map((part, k) => (k === i ? part + by : part)));
      return (8 * (at(step) - at(-step)) - (at(2 * step) - at(-2 * step))) / (12 * step);
    });
  let s: number[] = [0, 0, 0, 0, 0, 0];
  let g = slope(s);
  let inverse = identity(1e-4);
  for (let i = 0; i < 400; i++) {
    let way = inverse.map((row) => -dot(row, g));
    if (dot(way, g) >= 0) {
      inverse = identity(1e-4);
      way = g.map((part) => -part * 1e-4);
    }
    const now = energy(s);
    let reach = 1;
    while (
      energy(s.map((part, k) => part + reach * (way[k] ?? 0))) >
      now + 1e-4 * reach * dot(way, g)
    ) {
      reach /= 2;
      if (reach < 1e-14) return unscaled(s);
    }
    const step = way.map((part) => part * reach);
    s = s.map((part, k) => part + (step[k] ?? 0));
    const next = slope(s);
    const change = next.map((part, k) => part - (g[k] ?? 0));
    g = next;
    const curvature = dot(step, change);
    if (curvature > 1e-18) inverse = updated(inverse, step, change, curvature);
    if (Math.hypot(...g) < 1e-8 * Math.hypot(...load.force)) break;
  }
  return unscaled(s);
}

function identity(by: number): number[][] {
  return Array.from({ length: 6 }, (_, i) =>
    Array.from({ length: 6 }, (_u, j) => (i === j ? by : 0)),
  );
}

function updated(inverse: number[][], step: Six, change: Six, curvature: number): number[][] {
  const image = inverse.map((row) => dot(row, change));
  const factor = (1 + dot(change, image) / curvature) / curvature;
  return inverse.map((row, i) =>
    row.map(
      (part, j) =>
        part +
        factor * (step[i] ?? 0) * (step[j] ?? 0) -
        ((image[i] ?? 0) * (step[j] ?? 0) + (step[i] ?? 0) * (image[j] ?? 0)) / curvature,
    ),
  );
}

function dot(a: Six, b: Six): number {
  return a.reduce((sum, part, i) => sum + part * (b[i] ?? 0), 0);
}
