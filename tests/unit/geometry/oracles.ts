/** Ways to the same answers that share no formula with the module. */

/**
 * Height of the centre of a ball that rests on a circular hollow, found by rolling it over the profile's points: the
 * largest z_i + √(r² − (x − x_i)²). Measured from the hollow's deepest point.
 */
export function rolledHeight(
  hollow: { readonly curvatureRadius: number; readonly width: number },
  ballRadius: number,
  translation: number,
): number {
  const points = 40_001;
  let highest = -Infinity;
  for (let i = 0; i < points; i++) {
    const x = hollow.width * (i / (points - 1) - 0.5);
    const reach = ballRadius ** 2 - (translation - x) ** 2;
    if (reach < 0) continue;
    const z = hollow.curvatureRadius - Math.sqrt(hollow.curvatureRadius ** 2 - x ** 2);
    highest = Math.max(highest, z + Math.sqrt(reach));
  }
  return highest;
}

const nodes = [
  [0, 128 / 225],
  [0.538_469_310_105_683_1, 0.478_628_670_499_366_5],
  [-0.538_469_310_105_683_1, 0.478_628_670_499_366_5],
  [0.906_179_845_938_664, 0.236_926_885_056_189_1],
  [-0.906_179_845_938_664, 0.236_926_885_056_189_1],
] as const;

/** Integral of a smooth function by Gauss's five-point rule on equal panels. It never evaluates an end. */
export function integrate(of: (t: number) => number, from: number, to: number): number {
  const panels = 100;
  const half = (to - from) / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = from + (2 * panel + 1) * half;
    for (const [node, weight] of nodes) sum += weight * of(middle + node * half);
  }
  return sum * half;
}

/**
 * Area under a curve that has its one kink at `kink`, where it may also rise without limit like 1/√distance: each side
 * is integrated for itself, in a variable whose fourth power is the distance from the kink.
 */
export function areaWithKink(of: (x: number) => number, kink: number, end: number): number {
  const beyond = end - kink;
  const before = kink > 0 ? integrate((t) => of(kink * (1 - t ** 4)) * 4 * kink * t ** 3, 0, 1) : 0;
  const after = integrate((t) => of(kink + beyond * t ** 4) * 4 * beyond * t ** 3, 0, 1);
  return before + after;
}

/** Slope by central difference. */
export function slopeAt(of: (x: number) => number, x: number, step: number): number {
  return (of(x + step) - of(x - step)) / (2 * step);
}
