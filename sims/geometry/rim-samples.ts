import { heightAt, type FaceShape } from './face-shape.ts';
import { lipRays, type LipRays } from './lip-rays.ts';
import { polarRadius } from './polar-table.ts';
import { rimPieces, type RimPiece } from './rim-pieces.ts';

/** The rim in places close to each other, piece after piece: what a search looks at first. */
export interface RimSamples {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly pieces: readonly RimRun[];
  /** The lip inward of each place. */
  readonly rays: LipRays;
  /** How many places a coarse look may go on at a time and still follow the rim: a power of two. */
  readonly stride: number;
}

/** A piece of the rim and the places on it, evenly along its own parameter. A closed one ends with its first place. */
export interface RimRun {
  readonly piece: RimPiece;
  readonly first: number;
  readonly last: number;
}

/** The number of intervals of a piece is a multiple of this, so that a coarse look meets both of its ends. */
export const COARSEST_STRIDE = 8;

/** An arc has a place every degree, a straight edge one every 0.3 mm. */
const DEGREE = Math.PI / 180;
const EDGE_STEP = 0.3;

/** Samples the whole rim of a face. */
export function sampleRim(shape: FaceShape): RimSamples {
  const runs: RimRun[] = [];
  let first = 0;
  for (const piece of rimPieces(shape)) {
    const last = first + intervals(piece);
    runs.push({ piece, first, last });
    first = last + 1;
  }
  const out = {
    x: new Float64Array(first),
    y: new Float64Array(first),
    z: new Float64Array(first),
  };
  for (const run of runs) {
    for (let i = run.first; i <= run.last; i++) {
      const v = (i - run.first) / (run.last - run.first);
      const { x, y } = placeAlong(shape, run.piece, v);
      out.x[i] = x;
      out.y[i] = y;
      out.z[i] = heightAt(shape, x, y);
    }
  }
  return {
    ...out,
    pieces: runs,
    rays: lipRays(shape, out, runs),
    stride: strideAlong(out.x, out.y, runs),
  };
}

/** The longest stride between whose ends the rim bulges by less than {@link BULGE}. */
function strideAlong(x: Float64Array, y: Float64Array, runs: readonly RimRun[]): number {
  let stride = COARSEST_STRIDE;
  for (const { first, last } of runs) {
    for (let i = first; stride > 1 && i + stride <= last; i += stride) {
      while (stride > 1 && bulge(x, y, i, stride) > BULGE) stride /= 2;
    }
  }
  return stride;
}

/** mm. Of a circle of 20 mm radius 8° bulge by 0.05. */
const BULGE = 0.2;

function bulge(x: Float64Array, y: Float64Array, i: number, stride: number): number {
  const offset = (of: Float64Array): number =>
    (of[i + stride / 2] ?? 0) - ((of[i] ?? 0) + (of[i + stride] ?? 0)) / 2;
  return Math.hypot(offset(x), offset(y));
}

function intervals({ isArc, turn, dx, dy }: RimPiece): number {
  const size = isArc ? turn / DEGREE : Math.hypot(dx, dy) / EDGE_STEP;
  return COARSEST_STRIDE * Math.max(1, Math.ceil(size / COARSEST_STRIDE - 1e-9));
}

/** A place on a piece and the derivative there, v from 0 to 1. */
export function placeAlong(
  shape: FaceShape,
  piece: RimPiece,
  v: number,
): { readonly x: number; readonly y: number; readonly dx: number; readonly dy: number } {
  const { isArc, x, y, dx, dy, from, turn, inward } = piece;
  if (!isArc) return { x: x + dx * v, y: y + dy * v, dx, dy };
  const angle = from + turn * v;
  const { radius, slope } = polarRadius(shape.curve, angle);
  const distance = radius - inward;
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  return {
    x: distance * cosine,
    y: distance * sine,
    dx: turn * (slope * cosine - distance * sine),
    dy: turn * (slope * sine + distance * cosine),
  };
}

/** Area inside the rim, seen en face, mm²: half the integral of x dy − y dx along it, by Simpson's rule. */
export function areaInside(shape: FaceShape, { pieces }: RimSamples): number {
  let sum = 0;
  for (const { piece } of pieces) {
    const steps = 256;
    for (let i = 0; i <= steps; i++) {
      const { x, y, dx, dy } = placeAlong(shape, piece, i / steps);
      const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
      sum += (weight * (x * dy - y * dx)) / steps;
    }
  }
  return sum / 6;
}
