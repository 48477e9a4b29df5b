import { inRange, positive } from '../geometry/numeric.ts';

/** A plate that is glued along its face and pulled along its length. */
export interface Adherend {
  /** Young’s modulus, MPa, above 0 */
  readonly modulus: number;
  /** mm, above 0 */
  readonly thickness: number;
}

/** Two plates that overlap, joined by a thin layer; each is pulled at its own end of the overlap. */
export interface ShearLagQuestion {
  /** Length of the joint, mm, above 0 */
  readonly overlap: number;
  /** The first is pulled at the start of the overlap, the second at its end. */
  readonly adherends: readonly [Adherend, Adherend];
  readonly adhesive: {
    /** MPa, above 0 */
    readonly shearModulus: number;
    /** mm, above 0 */
    readonly thickness: number;
  };
  /** N; pulling apart is positive */
  readonly load: number;
  /** Of the joint, mm, above 0 */
  readonly width: number;
}

export interface ShearLag {
  /** From the start of the overlap to its end, mm, closer together near the ends; stress in MPa. */
  readonly shear: readonly { readonly position: number; readonly stress: number }[];
  /** Load over the area of the joint, MPa */
  readonly mean: number;
  /** Greatest stress over the mean, 1 and up; it is at the end where the more yielding plate is pulled. */
  readonly peakToMean: number;
  /** Length within which the load passes over, 1/ω, mm: a joint much longer than it carries no more. */
  readonly transferLength: number;
}

const POINTS = 401;

/**
 * Shear along a bonded overlap: the plates stretch, the layer between them shears, so that most of the load passes near
 * the two ends.
 *
 * With x from the middle, h half the overlap and b the width,
 * τ = (Pω/2b) [cosh ωx / sinh ωh + k sinh ωx / cosh ωh], ω² = (G/t)(1/E₁t₁ + 1/E₂t₂),
 * k = (E₁t₁ − E₂t₂)/(E₁t₁ + E₂t₂), from τ′ = (G/t)(ε₂ − ε₁) and the balance of each plate. Written with falling
 * exponentials, so that no joint is too long.
 *
 * Bending of the plates, and the peel it brings, are left out; the stress does not fall to nothing at the free end, as it
 * really must within a layer’s thickness.
 *
 * @throws RangeError for a length, modulus or width that is not above 0, or a load that is not finite
 *
 * Source: Volkersen 1938 (from memory).
 */
export function shearLag(question: ShearLagQuestion): ShearLag {
  const { overlap, adherends, adhesive, load, width } = question;
  positive('overlap', overlap, 'mm');
  positive('width', width, 'mm');
  positive('adhesive.shearModulus', adhesive.shearModulus, 'MPa');
  positive('adhesive.thickness', adhesive.thickness, 'mm');
  inRange('load', load, -Infinity, Infinity, 'N');
  const [first, second] = [
    yielding('adherends[0]', adherends[0]),
    yielding('adherends[1]', adherends[1]),
  ];
  const omega = Math.sqrt((adhesive.shearModulus / adhesive.thickness) * (first + second));
  const lean = (second - first) / (first + second);
  const half = overlap / 2;
  const mean = load / width / overlap;
  const even = (x: number): number => evenPart(omega, half, x);
  const odd = (x: number): number => oddPart(omega, half, x);
  const shear = Array.from({ length: POINTS }, (_, i) => {
    const x = half * graded((2 * i) / (POINTS - 1) - 1, omega * half);
    return { position: half + x, stress: mean * (even(x) + lean * odd(x)) };
  });
  return {
    shear,
    mean,
    peakToMean: even(half) + Math.abs(lean) * odd(half),
    transferLength: 1 / omega,
  };
}

/** Places from −1 to 1, the closer together near the ends the longer the joint is for what it carries over. */
function graded(place: number, reach: number): number {
  const steepness = 1 + Math.log1p(reach) / 2;
  return Math.tanh(steepness * place) / Math.tanh(steepness);
}

/** 1/Et of a plate: how far a pull on each mm of width stretches it, mm/N. */
function yielding(name: string, { modulus, thickness }: Adherend): number {
  positive(`${name}.modulus`, modulus, 'MPa');
  positive(`${name}.thickness`, thickness, 'mm');
  return 1 / (modulus * thickness);
}

/** ωh cosh ωx / sinh ωh */
function evenPart(omega: number, half: number, x: number): number {
  const away = Math.abs(x);
  const reach = omega * half;
  const top = Math.exp(-omega * (half - away)) * (1 + Math.exp(-2 * omega * away));
  return (reach * top) / -Math.expm1(-2 * reach);
}

/** ωh sinh ωx / cosh ωh */
function oddPart(omega: number, half: number, x: number): number {
  const away = Math.abs(x);
  const reach = omega * half;
  const top = Math.exp(-omega * (half - away)) * -Math.expm1(-2 * omega * away);
  return (Math.sign(x) * reach * top) / (1 + Math.exp(-2 * reach));
}
