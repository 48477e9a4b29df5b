/** A peg in its hole; both run straight in, from the level of the bone’s surface. */
export interface CementedPeg {
  /** Axis on the bone’s surface, mm */
  readonly x: number;
  readonly y: number;
  /** mm, above 0 */
  readonly diameter: number;
  /** With its tip, mm; of a round one at least its radius */
  readonly length: number;
  /** `flat`, or `round`: half a ball */
  readonly tip: 'flat' | 'round';
  /** End of the hole; a flat peg has a flat one. Left out: as the tip. */
  readonly holeEnd?: 'flat' | 'round' | undefined;
  /** Room planned all round, mm, 0 and up */
  readonly gap: number;
  /** Room planned beyond the tip, mm, 0 and up. Left out: as all round. */
  readonly tipGap?: number | undefined;
}

/** A keel in its slot, narrowing evenly from root to tip. */
export interface CementedKeel {
  /** Its middle on the bone’s surface, mm */
  readonly x: number;
  readonly y: number;
  /** Along y at the root, mm, above 0 */
  readonly length: number;
  /** Along x at the root, mm, above 0 */
  readonly thickness: number;
  /** At the tip, mm, above 0, at most those of the root. Left out: as the root. */
  readonly tipLength?: number | undefined;
  readonly tipThickness?: number | undefined;
  /** Into the bone, mm, above 0 */
  readonly height: number;
  /** As of a peg */
  readonly gap: number;
  readonly tipGap?: number | undefined;
}

export interface CementDesign {
  readonly pegs?: readonly CementedPeg[] | undefined;
  readonly keel?: CementedKeel | undefined;
  /** How much wider and deeper every hole is than planned, on every side, mm, 0 and up. Left out: 0. */
  readonly fitError?: number | undefined;
}

/** Volumes, mm³. */
export interface MantleVolume {
  /** Of the hole or slot */
  readonly hole: number;
  /** Of the peg or keel in it */
  readonly inside: number;
  /** What is left for cement */
  readonly cement: number;
}

export interface CementVolume {
  /** All the cement, mm³ */
  readonly total: number;
  /** In the order of the pegs */
  readonly pegs: readonly MantleVolume[];
  readonly keel: MantleVolume | null;
}
