/**
 * The exact answer that the two closed forms approximate: a rigid paraboloid pressed without friction into an elastic layer
 * that is bonded to a rigid backing.
 *
 * A pressure J₀(ξρ) on the layer sinks it by ((1 − ν)/G) L(ξt)/ξ times itself, with
 * L(q) = (2κ sinh 2q − 4q) / (2κ cosh 2q + κ² + 1 + 4q²), κ = 3 − 4ν. L → 1 is the half-space, and the first term for
 * small q is the confined modulus. Pressure is taken as Σ cₙ (1 − ρ²/a²)^(n − ½) over a patch of given radius; the cₙ
 * and the approach follow from least squares on the shape of the ball.
 */
export interface LayerContact {
  readonly load: number;
  readonly peakPressure: number;
}

export function layerContact(question: {
  readonly contactRadius: number;
  readonly thickness: number;
  readonly modulus: number;
  readonly poisson: number;
  readonly effectiveRadius: number;
}): LayerContact {
  const { contactRadius: a, thickness: t, modulus, poisson, effectiveRadius } = question;
  const terms = a / t < 4 ? 8 : 13;
  const places = Array.from({ length: 3 * terms }, (_, j) =>
    Math.sin((Math.PI / 2) * (0.02 + (0.98 * j) / (3 * terms - 1))),
  );
  const end = (25 * a) / t;
  const waves = gauss(Math.ceil(60 + 3 * end), 0, end);
  const compliance = (a * (1 - poisson)) / (modulus / (2 * (1 + poisson)));
  const bessels = waves.map(([y]) => places.map((s) => besselJ0(y * s)));
  const columns = Array.from({ length: terms }, (_, index) => {
    const n = index + 1;
    const transforms = waves.map(
      ([y, w]) => w * transform(n, y) * (layerShape((y * t) / a, poisson) - 1),
    );
    return places.map((s, j) => {
      const backing = transforms.reduce(
        (sum, value, i) => sum + value * (bessels[i]?.[j] ?? NaN),
        0,
      );
      return compliance * (halfSpaceSinking(n, s) + backing);
    });
  });
  const wanted = places.map((s) => -((s * a) ** 2) / (2 * effectiveRadius));
  const solved = leastSquares([...columns, places.map(() => -1)], wanted).slice(0, terms);
  return {
    load: solved.reduce((sum, c, index) => sum + (c * Math.PI * a * a) / (index + 1.5), 0),
    peakPressure: solved.reduce((sum, c) => sum + c, 0),
  };
}

function layerShape(q: number, poisson: number): number {
  const kappa = 3 - 4 * poisson;
  const e = Math.exp(-2 * q);
  return (
    (kappa * (1 - e * e) - 4 * q * e) / (kappa * (1 + e * e) + (kappa ** 2 + 1 + 4 * q * q) * e)
  );
}

/** ∫₀¹ (1 − s²)^(n − ½) J₀(ys) s ds = (2n − 1)!! jₙ(y) / yⁿ, jₙ a spherical Bessel function. */
function transform(n: number, y: number): number {
  let odd = 1;
  for (let i = 1; i <= n; i++) odd *= 2 * i - 1;
  if (y < 8) {
    let term = 1 / (2 * n + 1);
    let sum = term;
    for (let k = 1; k < 60; k++) {
      term *= -(y * y) / 2 / k / (2 * n + 2 * k + 1);
      sum += term;
    }
    return sum;
  }
  let before = Math.cos(y);
  let now = Math.sin(y) / y;
  for (let i = 0; i < n; i++) [before, now] = [now, ((2 * i + 1) * now - before) / (y * y)];
  return odd * now;
}

/** ∫₀^∞ of the transform times J₀(ys) dy: a polynomial in s², by the integral of Weber and Schafheitlin. */
function halfSpaceSinking(n: number, s: number): number {
  // 2F1(½, −n; 1; s²) with its factor √π Γ(n + ½) / (2 n!) · ½ … built up from n = 0.
  let factor = Math.PI / 2;
  for (let i = 1; i <= n; i++) factor *= (i - 0.5) / i;
  let term = 1;
  let sum = 1;
  for (let i = 0; i < n; i++) {
    term *= ((0.5 + i) * (i - n) * s * s) / (i + 1) ** 2;
    sum += term;
  }
  return factor * sum;
}

/** By its integral: an even rule over a whole period is as good as exact. */
function besselJ0(x: number): number {
  const count = Math.ceil(16 + 0.6 * Math.abs(x));
  let sum = 0;
  for (let i = 0; i < count; i++) sum += Math.cos(x * Math.sin((Math.PI * (i + 0.5)) / count));
  return sum / count;
}

const kept = new Map<number, readonly (readonly [node: number, weight: number])[]>();

/** Gauss's rule of `count` points on [from, to], nodes by Newton on Legendre's polynomial. */
function gauss(count: number, from: number, to: number): readonly (readonly [number, number])[] {
  const unit = kept.get(count) ?? legendre(count);
  kept.set(count, unit);
  return unit.map(([x, w]) => [from + ((to - from) * (x + 1)) / 2, (w * (to - from)) / 2]);
}

function legendre(count: number): readonly (readonly [number, number])[] {
  return Array.from({ length: count }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 0;
    for (let round = 0; round < 20; round++) {
      let [before, now] = [1, x];
      for (let n = 2; n <= count; n++) {
        [before, now] = [now, ((2 * n - 1) * x * now - (n - 1) * before) / n];
      }
      slope = (count * (x * now - before)) / (x * x - 1);
      const step = now / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    return [x, 2 / ((1 - x * x) * slope * slope)] as const;
  });
}

/** The combination of columns nearest to `wanted`, by Gram and Schmidt done twice. */
function leastSquares(
  columns: readonly (readonly number[])[],
  wanted: readonly number[],
): readonly number[] {
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? NaN), 0);
  const bases: number[][] = [];
  const upper: number[][] = [];
  for (const column of columns) {
    let rest = [...column];
    const along = bases.map(() => 0);
    for (let round = 0; round < 2; round++) {
      bases.forEach((base, i) => {
        const part = dot(base, rest);
        along[i] = (along[i] ?? 0) + part;
        rest = rest.map((value, j) => value - part * (base[j] ?? NaN));
      });
    }
    const size = Math.sqrt(dot(rest, rest));
    bases.push(rest.map((value) => value / size));
    upper.push([...along, size]);
  }
  const solved = columns.map(() => 0);
  for (let i = columns.length - 1; i >= 0; i--) {
    let value = dot(bases[i] ?? [], wanted);
    for (let j = i + 1; j < columns.length; j++)
      value -= (upper[j]?.[i] ?? NaN) * (solved[j] ?? NaN);
    solved[i] = value / (upper[i]?.[i] ?? NaN);
  }
  return solved;
}
