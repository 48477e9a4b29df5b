import type { Face } from './face.ts';
import { freshRay, type LipRay } from './lip-ray.ts';
import { BOW, EASE, HALF, ofRay } from './lip-rays.ts';
import { LENGTH_TOLERANCE } from './numeric.ts';
import { COARSEST_STRIDE, type RimSamples } from './rim-samples.ts';
import type { SurfaceDerivatives } from './two-radius-surface.ts';

/**
 * Workspace of a search for the contact of one ball with one face. The search runs thousands of times for one map, so it
 * writes its findings here and makes no objects of its own.
 */
export interface ContactSearch {
  readonly face: Face;
  /** Ball radius and its square, mm and mm². */
  readonly r: number;
  readonly rr: number;
  /** r² and a hair, so that a place straight beside the ball's centre counts as touched in spite of rounding. */
  readonly wide: number;
  /** Curvatures of the surface, 1/mm. */
  readonly kx: number;
  readonly ky: number;
  /** Whether the ball is smaller than both radii, so that it can touch the hollow. */
  readonly fitsHollow: boolean;
  /** Whether ball and surface are one and the same sphere, so that at rest they touch all over. */
  readonly conforms: boolean;
  /** Whether a contact inside the hollow rules out every other: a sphere without a lip. */
  readonly hollowDecides: boolean;
  /** Rise of the lip over its width; 0 for none. */
  readonly lipSlope: number;
  readonly lipWidth: number;
  /** Whether the outline bends so sharply somewhere that the rim needs a closer look. */
  readonly isPointed: boolean;
  /** Whether the lip is so wide on so tight a curve that it lies well below the chord across it. */
  readonly isBowed: boolean;
  /** How many places of the rim the coarse look goes on at a time. */
  readonly stride: number;
  /** Height of the ball's centre over the places of the rim that were looked at. */
  readonly looked: Float64Array;
  /** Local maxima that the coarse look met: index (with fraction), piece, estimated height. */
  readonly found: FoundMaxima;
  readonly derivatives: SurfaceDerivatives;
  /** Where a climb in the hollow has ended. */
  readonly peak: { x: number; y: number };
  /** The ray over the lip that is looked at. */
  readonly ray: LipRay;

  /** Direction of the translation: angle, cosine, sine. */
  angle: number;
  ux: number;
  uy: number;

  /** Where the ball's centre stands, seen en face, mm. */
  cx: number;
  cy: number;

  /** Outline at the angle asked for last: the angle's cosine and sine, radius and its first two derivatives by the angle. */
  cosine: number;
  sine: number;
  radius: number;
  radius1: number;
  radius2: number;

  /** The contact. Height is that of the ball's centre less its radius, mm. */
  height: number;
  ratio: number;
  x: number;
  y: number;
  /** Whether the contact is on the rim, or on the hollow or lip. */
  onRim: boolean;
  /** Of a contact on the surface its distance from the middle, as a share of the rim's, less 1. */
  inside: number;
}

export interface FoundMaxima {
  count: number;
  readonly index: Float64Array;
  readonly piece: Int32Array;
  readonly place: Int32Array;
  readonly height: Float64Array;
  /** How much higher than that it may be. */
  readonly slack: Float64Array;
}

/** Whether the lip lies far below its chord somewhere, or is bowed almost as tightly as the ball there. */
function isBowed({ x, rays }: RimSamples, r: number): boolean {
  return x.some((_, i) => {
    const bow = ofRay(rays, i, BOW);
    const depth = bow * ofRay(rays, i, HALF) ** 2;
    const share = 2 * bow * r * ofRay(rays, i, EASE);
    return depth > DEEP || share > TIGHT || depth * share * share > UNSURE;
  });
}

/** mm. A lip 4 mm wide on a curve of 27 mm lies 0.17 mm below its chord at the top of a high face. */
const DEEP = 0.25;

/** Share of the ball's own curvature. */
const TIGHT = 0.7;

/** About how much a height told by the chord may be off, mm. */
const UNSURE = 0.05;

/** More local maxima along a rim than any face has. */
const ROOM = 64;

/** A workspace for a face and a ball. */
export function contactSearch(onFace: Face, ballRadius: number): ContactSearch {
  const { curvatureRadiusAP, curvatureRadiusSI, labrum } = onFace;
  const smaller = Math.min(curvatureRadiusAP, curvatureRadiusSI);
  const isSphere = curvatureRadiusAP === curvatureRadiusSI;
  const isEqual = Math.abs(ballRadius - smaller) <= smaller * LENGTH_TOLERANCE;
  const conforms = isSphere && isEqual;
  const r = conforms ? smaller : ballRadius;
  const stride = strideFor(r, onFace.rim.stride);
  return {
    face: onFace,
    r,
    rr: r * r,
    wide: r * r * (1 + LENGTH_TOLERANCE * 1e-3),
    kx: 1 / curvatureRadiusAP,
    ky: 1 / curvatureRadiusSI,
    fitsHollow: r < smaller && !isEqual,
    conforms,
    hollowDecides: isSphere && labrum === undefined,
    lipSlope: labrum === undefined ? 0 : labrum.height / labrum.width,
    lipWidth: labrum?.width ?? 0,
    isPointed: onFace.rim.stride < COARSEST_STRIDE,
    isBowed: isBowed(onFace.rim, r),
    stride,
    looked: new Float64Array(onFace.rim.x.length),
    found: {
      count: 0,
      index: new Float64Array(ROOM),
      piece: new Int32Array(ROOM),
      place: new Int32Array(ROOM),
      height: new Float64Array(ROOM),
      slack: new Float64Array(ROOM),
    },
    derivatives: { z: 0, zx: 0, zy: 0, zxx: 0, zxy: 0, zyy: 0 },
    peak: { x: 0, y: 0 },
    ray: freshRay(),
    angle: 0,
    ux: 1,
    uy: 0,
    cx: 0,
    cy: 0,
    cosine: 1,
    sine: 0,
    radius: 0,
    radius1: 0,
    radius2: 0,
    height: 0,
    ratio: 0,
    x: 0,
    y: 0,
    onRim: false,
    inside: 0,
  };
}

/** A place every 8° sees every maximum under a ball of 16 mm and more; a smaller one needs a closer look. */
function strideFor(r: number, longest: number): number {
  let stride = longest;
  while (stride > 1 && r < 2 * stride) stride /= 2;
  return stride;
}
