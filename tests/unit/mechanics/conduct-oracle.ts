/** Closed forms of conduction, written apart from the code they judge. */

/** Error function: the power series near 0, Lentz’s continued fraction of its complement farther out. */
export function erf(x: number): number {
  if (x < 0) return -erf(-x);
  if (x > 2.5) return 1 - erfcFraction(x);
  let [term, sum] = [x, x];
  for (let n = 1; n < 80; n++) {
    term *= -(x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

function erfcFraction(x: number): number {
  let fraction = 0;
  for (let n = 60; n >= 1; n--) fraction = n / 2 / (x + fraction);
  return Math.exp(-x * x) / ((x + fraction) * Math.sqrt(Math.PI));
}

/** The x at which a rising function has a value. */
export function inverse(
  of: (x: number) => number,
  value: number,
  low: number,
  high: number,
): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (of(middle) < value) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/**
 * A slab of half thickness 1 with films at both sides: what is left of its first difference from the ambient, at a
 * place from its middle, for a Biot and a Fourier number. Series of Σ 4 sin λ / (2λ + sin 2λ) · exp(−λ²Fo) cos λx, λ tan λ = Bi.
 */
export function slabSeries(biot: number, fourier: number, place: number): number {
  let sum = 0;
  for (let n = 0; n < 200; n++) {
    const from = n * Math.PI;
    const root = inverse(
      (λ) => λ * Math.sin(λ - from) - biot * Math.cos(λ - from),
      0,
      from,
      from + Math.PI / 2,
    );
    const weight = (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root));
    sum += weight * Math.exp(-root * root * fourier) * Math.cos(root * place);
  }
  return sum;
}

/** Roots of J₀ (handbook). */
const BESSEL_ROOTS = [
  2.404825557695773, 5.520078110286311, 8.653727912911013, 11.79153443901428, 14.93091770848779,
  18.07106396791092, 21.21163662987926, 24.3524715307493,
];

/** A rod of radius 1 whose surface is held: its mean difference, of the first one, for a Fourier number. */
export function rodMean(fourier: number): number {
  return BESSEL_ROOTS.reduce(
    (sum, root) => sum + (4 / (root * root)) * Math.exp(-root * root * fourier),
    0,
  );
}
