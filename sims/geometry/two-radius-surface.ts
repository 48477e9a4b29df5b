/**
 * The articular surface without its labrum: the two-radius surface
 *
 *     z = q / (1 + √(1 − s)),   q = x²/Rx + y²/Ry,   s = x²/Rx² + y²/Ry²
 *
 * Its section with the plane y = 0 is exactly a circle of radius Rx (AP), that with x = 0 exactly one of radius Ry (SI),
 * and it is smooth between them. With two equal radii it is exactly the sphere, z = R − √(R² − ρ²).
 */
export interface SurfaceDerivatives {
  /** Height over the deepest point, mm. */
  z: number;
  /** Slopes. */
  zx: number;
  zy: number;
  /** Second derivatives, 1/mm. */
  zxx: number;
  zxy: number;
  zyy: number;
}

/** Where s is 1 the surface stands upright. Its derivatives are taken no nearer than this, at a slope of some 1e4. */
const UPRIGHT = 1e-8;

/** 1 − s below this is rounding: the place lies where the surface stands upright. */
const ROUNDING = 1e-15;

function rootOf(ww: number): number {
  return ww > ROUNDING ? Math.sqrt(ww) : 0;
}

/** Height at (x, y), mm, for curvatures 1/Rx and 1/Ry in 1/mm. */
export function surfaceZ(kx: number, ky: number, x: number, y: number): number {
  const px = kx * x;
  const py = ky * y;
  return (px * x + py * y) / (1 + rootOf(1 - px * px - py * py));
}

/** Height and its derivatives at (x, y), written into `out`: this runs in the innermost loops. */
export function differentiateSurface(
  out: SurfaceDerivatives,
  kx: number,
  ky: number,
  x: number,
  y: number,
): void {
  const px = kx * x;
  const py = ky * y;
  const q = px * x + py * y;
  const ww = 1 - px * px - py * py;
  const w = Math.sqrt(ww > UPRIGHT ? ww : UPRIGHT);
  // a = 1/(1 + w), the part that q is multiplied by, and its derivatives.
  const a = 1 / (1 + w);
  const b = (a * a) / w;
  const ax = kx * px * b;
  const ay = ky * py * b;
  const turn = a * b * (2 / w) + b / (w * w);
  const axx = kx * kx * (b + px * px * turn);
  const axy = kx * px * ky * py * turn;
  const ayy = ky * ky * (b + py * py * turn);
  out.z = ww > UPRIGHT ? q * a : q / (1 + rootOf(ww));
  out.zx = 2 * px * a + q * ax;
  out.zy = 2 * py * a + q * ay;
  out.zxx = 2 * kx * a + 4 * px * ax + q * axx;
  out.zxy = 2 * (px * ay + py * ax) + q * axy;
  out.zyy = 2 * ky * a + 4 * py * ay + q * ayy;
}
