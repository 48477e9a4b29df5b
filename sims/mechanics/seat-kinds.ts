/** How a peg or a keel holds in the bone. */
export type HoldKind =
  | 'smooth cemented'
  | 'textured cemented'
  | 'fluted press-fit'
  | 'in-grown'
  | 'keel cemented'
  | 'metal-backed screw-fixed';

/** What a kind of hold is worth. */
export interface Hold {
  /** Shear stress on its sides at which it pulls out, N/mm² */
  readonly strength: number;
  /** Stiffness of its grip along the axis as a share of a perfect bond, 0 to 1 */
  readonly grip: number;
  /** Where the two numbers come from. */
  readonly provenance: string;
}

const near = (what: string): string => `teaching values; the strength ${what}`;

/**
 * The kinds of hold. No source gives strength and stiffness for all of them side by side, so that these are teaching
 * values. The two that could be set beside measured pull-outs were: whole cemented components pulled out of cadaver bone
 * at 884 (650–1264) N with pegs and 1093 (764–1343) N with a keel, all between polyethylene and cement (Raiss et al.
 * 2011, read as an abstract).
 */
export const holds: Readonly<Record<HoldKind, Hold>> = {
  'smooth cemented': {
    strength: 1.9,
    grip: 1,
    provenance: near('is near the mean pull-out of pegged cemented components'),
  },
  'textured cemented': { strength: 4, grip: 1, provenance: near('is about twice that of smooth') },
  'fluted press-fit': {
    strength: 1,
    grip: 0.5,
    provenance: near('and the grip are about half of smooth cemented, before bone has grown in'),
  },
  'in-grown': { strength: 4, grip: 1, provenance: near('is that of a textured cemented peg') },
  'keel cemented': {
    strength: 2,
    grip: 1,
    provenance: near('is near the mean pull-out of keeled cemented components'),
  },
  'metal-backed screw-fixed': {
    strength: 6,
    grip: 1,
    provenance: near('is the greatest here, as the thread of a screw takes hold of the bone'),
  },
};

/** @throws RangeError for a kind that is none */
export function holdOf(kind: HoldKind): Hold {
  if (!Object.hasOwn(holds, kind)) {
    throw new RangeError(`kind is ${kind}; allowed: ${Object.keys(holds).join(', ')}`);
  }
  return holds[kind];
}
