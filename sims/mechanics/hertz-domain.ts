import type { RoundPatch } from './hertz.ts';

/** Which of the two closed forms may be believed, by its peak pressure. */
export type BelievedForm = 'Hertz' | 'thin layer' | 'neither';

/** Where a contact stands between a thick block and a thin layer. */
export interface HertzDomain {
  readonly believe: BelievedForm;
  /** Hertz's patch radius over the thickness; 0 for a block without end, null for a conforming pair. */
  readonly patchToThickness: number | null;
  /** Hertz's patch radius over the ball's radius; null for a conforming pair. */
  readonly patchToBall: number | null;
  /** Both surfaces still count as parabolas over the patch. */
  readonly isSmallPatch: boolean;
  /** The backing is hardly felt: Hertz is right within a tenth. */
  readonly isHalfSpace: boolean;
  /** The plastic hardly escapes sideways: the foundation is right within a tenth. */
  readonly isThinLayer: boolean;
  /** The same in a sentence. */
  readonly words: string;
}

/** Patch radius over ball radius up to which a parabola stands for a sphere; pressure is then within 5 %. */
const SMALL_PATCH = 0.3;

/**
 * Patch radius over thickness up to which Hertz's peak pressure is within a tenth of that of an elastic layer bonded to a
 * rigid backing, at every Poisson's ratio. Found by solving that layer exactly; tests do it again.
 */
const HALF_SPACE = 0.6;

/** Patch radius over thickness below which no layer is thin. */
const LEAST_THIN_LAYER = 1.2;

/** As {@link leastThinLayer}: measured against the exact layer for ν = 0.4, 0.46 and 0.49. */
const THIN_LAYER_FACTOR = 5.8;

/**
 * Patch radius over thickness from which the foundation's peak pressure is within a tenth of the exact layer's.
 *
 * A layer of thickness t under a pressure that varies as cos ξx gives way by (t/M) p (1 + g ξ²t² …), M the confined modulus
 * and g = 2κ / 3(κ − 1) − 4 / (κ + 1), κ = 3 − 4ν. The bed of springs is the first term alone, so it is good where the
 * patch is wide against t√g. As ν nears one half, g grows without limit: plastic that cannot be squeezed must flow out,
 * and from under a wide patch it cannot.
 */
export function leastThinLayer(poisson: number): number {
  const kappa = 3 - 4 * poisson;
  const g = (2 * kappa) / (3 * (kappa - 1)) - 4 / (kappa + 1);
  return Math.max(LEAST_THIN_LAYER, THIN_LAYER_FACTOR * Math.sqrt(Math.max(0, g)));
}

interface DomainQuestion {
  readonly ballRadius: number;
  readonly poisson: number;
  readonly thickness: number | undefined;
  readonly hertz: RoundPatch | null;
  readonly thinLayer: RoundPatch | null;
}

/** What may be believed of a contact. */
export function domainOf(question: DomainQuestion): HertzDomain {
  const { ballRadius, poisson, thickness = Infinity, hertz, thinLayer } = question;
  if (hertz === null) {
    return {
      believe: 'neither',
      patchToThickness: null,
      patchToBall: null,
      isSmallPatch: false,
      isHalfSpace: false,
      isThinLayer: false,
      words: 'The ball fits its socket: the patch ends only at the rim, and neither formula holds.',
    };
  }
  const patchToThickness = hertz.contactRadius / thickness;
  const patchToBall = hertz.contactRadius / ballRadius;
  const thinPatch = thinLayer?.contactRadius ?? 0;
  const isHalfSpace = patchToThickness <= HALF_SPACE;
  const isThinLayer = thinPatch / thickness >= leastThinLayer(poisson);
  const widest = isThinLayer ? thinPatch : hertz.contactRadius;
  const isSmallPatch = widest <= SMALL_PATCH * ballRadius;
  const believe = believed(isSmallPatch, isHalfSpace, isThinLayer);
  return {
    believe,
    patchToThickness,
    patchToBall,
    isSmallPatch,
    isHalfSpace,
    isThinLayer,
    words: wordsFor(isSmallPatch, isHalfSpace, isThinLayer),
  };
}

function believed(isSmallPatch: boolean, isHalfSpace: boolean, isThinLayer: boolean): BelievedForm {
  if (!isSmallPatch) return 'neither';
  if (isHalfSpace) return 'Hertz';
  return isThinLayer ? 'thin layer' : 'neither';
}

function wordsFor(isSmallPatch: boolean, isHalfSpace: boolean, isThinLayer: boolean): string {
  if (!isSmallPatch) {
    return 'The patch is wide against the ball: neither formula holds.';
  }
  if (isHalfSpace) {
    return 'The patch is small against the thickness: Hertz holds within a tenth, the thin layer does not.';
  }
  if (isThinLayer) {
    return 'The patch is wide against the thickness: the thin layer holds within a tenth, Hertz does not.';
  }
  return 'The patch is about as wide as the layer is thick: neither formula holds within a tenth.';
}
