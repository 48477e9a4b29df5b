import type { CapContact, CapPose } from './contact-pressure-cap.ts';
import { penetrationOnCap } from './contact-pressure-cap.ts';

/** Bands of rings in each of the two parts of a pressed cap: rings whole, and rings cut by the rim. */
export const BANDS = 20;

/** Gauss's three-point rule on 0 … 1. */
export const GAUSS_NODES = [0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)] as const;
export const GAUSS_WEIGHTS = [5 / 18, 8 / 18, 5 / 18] as const;

/**
 * Goes over the pressed cap ring by ring, outward from the line of centres.
 *
 * The rim lies at `halfArc` about the centre line. Rings wholly inside it come first. Of a ring it cuts, an arc to
 * either side of the direction toward the centre line is left, and that arc opens like a square root: a sine square as
 * variable takes the root away, so that Gauss's rule keeps its order.
 *
 * @param visit gets the band, the ring's angle α, its weight dα and the half arc Ω of it that lies inside the rim
 */
export function overRings(
  { tilt, reach }: CapPose,
  halfArc: number,
  visit: (band: number, alpha: number, weight: number, halfTurn: number) => void,
): void {
  const whole = Math.min(reach, halfArc - tilt);
  const inner = Math.abs(halfArc - tilt);
  const cut = tilt > 0 ? Math.min(reach, halfArc + tilt) - inner : 0;
  for (let band = 0; band < BANDS; band++) {
    for (let node = 0; node < 3; node++) {
      const part = (band + (GAUSS_NODES[node] ?? 0)) / BANDS;
      const weight = (GAUSS_WEIGHTS[node] ?? 0) / BANDS;
      if (whole > 0) visit(band, whole * part, whole * weight, Math.PI);
      if (cut > 0) {
        const alpha = inner + cut * Math.sin((Math.PI / 2) * part) ** 2;
        const stretch = cut * (Math.PI / 2) * Math.sin(Math.PI * part);
        visit(BANDS + band, alpha, stretch * weight, halfTurn(alpha, tilt, halfArc));
      }
    }
  }
}

/**
 * The angle, in a spherical triangle with these three sides, opposite the last: π where the sides beside it reach no
 * triangle because they are too short, 0 where they are too far apart. By half angles, which keep their digits.
 */
export function halfTurn(besideOne: number, besideTwo: number, opposite: number): number {
  const half = (besideOne + besideTwo + opposite) / 2;
  const sine = Math.sin(half - besideOne) * Math.sin(half - besideTwo);
  const cosine = Math.sin(half) * Math.sin(half - opposite);
  return 2 * Math.atan2(Math.sqrt(Math.max(0, sine)), Math.sqrt(Math.max(0, cosine)));
}

/** What the pressed cap inside a rim adds up to, for a bed modulus of 1 N/mm³. */
export interface CapLoads {
  /** Pressure over the area, N. */
  readonly total: number;
  /** Its part along the centre line, N. */
  readonly compressive: number;
  /** Its part against the translation, N. */
  readonly side: number;
  /** mm² */
  readonly area: number;
}

/**
 * Adds up the pressure on a cap, each bit along the socket's own normal.
 *
 * @param halfArc of the rim, rad; a smaller one than the socket's leaves its margin out
 */
export function loadsOnCap(cap: CapContact, pose: CapPose, halfArc = cap.halfArc): CapLoads {
  let total = 0;
  let along = 0;
  let across = 0;
  let area = 0;
  overRings(pose, halfArc, (_, alpha, weight, half) => {
    const sine = Math.sin(alpha);
    const penetration = penetrationOnCap(cap, pose, alpha);
    const strip = 2 * half * sine * weight;
    area += strip;
    total += strip * penetration;
    along += strip * penetration * Math.cos(alpha);
    // A whole ring has none, and the sine of π would leave a rest.
    if (half < Math.PI) across += 2 * Math.sin(half) * sine ** 2 * weight * penetration;
  });
  const square = cap.curvatureRadius ** 2;
  const [sine, cosine] = [Math.sin(pose.tilt), Math.cos(pose.tilt)];
  return {
    total: square * total,
    compressive: square * (cosine * along + sine * across),
    side: square * (sine * along - cosine * across),
    area: square * area,
  };
}
