import { radialMismatch, type SphericalSocket } from '../geometry/index.ts';
import { inRange, positive } from '../geometry/numeric.ts';
import { foundationModulus, GREATEST_POISSON } from './foundation.ts';
import { domainOf, type HertzDomain } from './hertz-domain.ts';

/** A rigid ball in a hollow of plastic, far from any rim. */
export interface HertzQuestion {
  /** mm, above 0 and at most the socket's radius */
  readonly ballRadius: number;
  /** Radius of curvature of the hollow, mm; Infinity for a flat one. */
  readonly socketRadius: number;
  /** Young's modulus of the plastic, MPa, above 0 */
  readonly modulus: number;
  /** Its Poisson's ratio, 0 … 0.499 */
  readonly poisson: number;
  /** N, above 0 */
  readonly load: number;
  /** Thickness of the plastic on its backing, mm. Left out: a block without end. */
  readonly thickness?: number | undefined;
}

/** A round patch and its pressures. */
export interface RoundPatch {
  /** a, mm */
  readonly contactRadius: number;
  /** p₀, MPa, in the middle */
  readonly peakPressure: number;
  /** F/πa², MPa */
  readonly meanPressure: number;
  /** δ, how far the ball comes nearer, mm */
  readonly approach: number;
}

/** The two closed forms side by side, and which of them may be believed. */
export interface HertzContact {
  /** 1/Re = 1/r − 1/R, mm; null for a conforming pair, where it has no end. */
  readonly effectiveRadius: number | null;
  /** Contact on a block without end; null for a conforming pair. */
  readonly hertz: RoundPatch | null;
  /** Contact on a layer so thin that it is a bed of springs; null without a thickness or for a conforming pair. */
  readonly thinLayer: RoundPatch | null;
  /** As `hertz`, for short. */
  readonly contactRadius: number | null;
  readonly peakPressure: number | null;
  readonly domain: HertzDomain;
}

/**
 * Hertz contact of a rigid ball in a hollow, a³ = 3FRe/4E*, p₀ = 3F/2πa², E* = E/(1 − ν²), with the elastic foundation's
 * F = πkReδ², p₀ = kδ, a² = 2Reδ beside it.
 *
 * Hertz takes the plastic to be endless, the foundation to be thin; the first has pressure grow with the cube root of the
 * load and with (1/Re)^⅔, the second with the square roots of both. In between, where most sockets are, neither is right
 * and `domain` says so. For a conforming pair both fail: see `contactPressure`.
 *
 * @throws RangeError naming the argument, its value and what is allowed
 *
 * Source: Johnson, Contact Mechanics, ch. 4 (from memory).
 */
export function hertzContact(question: HertzQuestion): HertzContact {
  const { ballRadius, socketRadius, modulus, poisson, load, thickness } = question;
  const mismatch = mismatchOf(ballRadius, socketRadius);
  positive('modulus', modulus, 'MPa');
  inRange('poisson', poisson, 0, GREATEST_POISSON, '');
  positive('load', load, 'N');
  const bed = thickness === undefined ? null : foundationModulus({ thickness, modulus, poisson });
  if (mismatch === 0) {
    return {
      effectiveRadius: null,
      hertz: null,
      thinLayer: null,
      contactRadius: null,
      peakPressure: null,
      domain: domainOf({ ballRadius, poisson, thickness, hertz: null, thinLayer: null }),
    };
  }
  const effectiveRadius = ballRadius / (1 - ballRadius / socketRadius);
  const hertz = hertzPatch(effectiveRadius, modulus / (1 - poisson ** 2), load);
  const thinLayer = bed === null ? null : thinLayerPatch(effectiveRadius, bed, load);
  return {
    effectiveRadius,
    hertz,
    thinLayer,
    contactRadius: hertz.contactRadius,
    peakPressure: hertz.peakPressure,
    domain: domainOf({ ballRadius, poisson, thickness, hertz, thinLayer }),
  };
}

/** Checks both radii, and counts as conforming what the geometry counts as that. */
function mismatchOf(ballRadius: number, socketRadius: number): number {
  if (!(socketRadius > 0)) {
    throw new RangeError(`socketRadius is ${String(socketRadius)}; allowed: any value above 0 mm`);
  }
  const isFlat = socketRadius === Infinity;
  const hollow: SphericalSocket = {
    curvatureRadius: socketRadius,
    width: 2 * socketRadius,
    halfArc: isFlat ? 0 : Math.PI / 2,
    depth: isFlat ? 0 : socketRadius,
  };
  return radialMismatch(hollow, ballRadius);
}

function hertzPatch(effectiveRadius: number, contactModulus: number, load: number): RoundPatch {
  const contactRadius = Math.cbrt((3 * load * effectiveRadius) / (4 * contactModulus));
  const meanPressure = load / (Math.PI * contactRadius ** 2);
  return {
    contactRadius,
    peakPressure: 1.5 * meanPressure,
    meanPressure,
    approach: contactRadius ** 2 / effectiveRadius,
  };
}

function thinLayerPatch(effectiveRadius: number, bed: number, load: number): RoundPatch {
  const approach = Math.sqrt(load / (Math.PI * bed * effectiveRadius));
  const contactRadius = Math.sqrt(2 * effectiveRadius * approach);
  return {
    contactRadius,
    peakPressure: bed * approach,
    meanPressure: (bed * approach) / 2,
    approach,
  };
}
