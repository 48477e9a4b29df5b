import type { ContactSearch } from './contact-search.ts';
import { climbAlongRim } from './rim-climb.ts';
import type { RimRun } from './rim-samples.ts';

/** A maximum whose estimate is this much lower than the best one (mm) is not looked at more closely. */
const LEFT_OUT = 0.06;

/** At the end of a piece there is no estimate: a maximum may hide between the last two places. */
const LEFT_OUT_AT_END = 0.2;

/** Offers the contacts on the rim. */
export function offerRim(search: ContactSearch): void {
  lookAlongRim(search);
  const { found } = search;
  if (found.count === 0) findNearest(search);
  let highest = -Infinity;
  for (let i = 0; i < found.count; i++) highest = Math.max(highest, found.height[i] as number);
  for (let i = 0; i < found.count; i++) {
    if ((found.height[i] as number) + (found.slack[i] as number) < highest) continue;
    climbAlongRim(search, i);
  }
}

/** Coarse look: notes every local maximum, with its place and height as a parabola through three places has them. */
function lookAlongRim(search: ContactSearch): void {
  const { wide, stride, found, cx, cy } = search;
  const { x, y, z, pieces } = search.face.rim;
  found.count = 0;
  for (let p = 0; p < pieces.length; p++) {
    const { piece, first, last } = pieces[p] as RimRun;
    const { closed } = piece;
    let here = centreHeight(x, y, z, first, wide, cx, cy);
    let before = closed ? centreHeight(x, y, z, last - stride, wide, cx, cy) : -Infinity;
    const stop = closed ? last - stride : last;
    for (let i = first; i <= stop; i += stride) {
      const after = i < last ? centreHeight(x, y, z, i + stride, wide, cx, cy) : -Infinity;
      if (here >= before && here >= after && here > -Infinity) {
        const bend = 2 * here - before - after;
        const lean = after - before;
        const inner = bend > 0 && bend < Infinity;
        const n = found.count < found.index.length ? found.count++ : found.count - 1;
        found.piece[n] = p;
        found.index[n] = inner ? i + (stride * lean) / (2 * bend) : i;
        found.height[n] = inner ? here + (lean * lean) / (8 * bend) : here;
        found.slack[n] = inner ? LEFT_OUT : LEFT_OUT_AT_END;
      }
      before = here;
      here = after;
    }
  }
}

function centreHeight(
  x: Float64Array,
  y: Float64Array,
  z: Float64Array,
  i: number,
  wide: number,
  cx: number,
  cy: number,
): number {
  const dx = (x[i] as number) - cx;
  const dy = (y[i] as number) - cy;
  const under = wide - dx * dx - dy * dy;
  return under > 0 ? (z[i] as number) + Math.sqrt(under) : -Infinity;
}

/** For a ball so small that it may stand between two places: the one nearest to it. */
function findNearest({ face, found, cx, cy }: ContactSearch): void {
  const { x, y, pieces } = face.rim;
  let least = Infinity;
  for (let p = 0; p < pieces.length; p++) {
    const { first, last } = pieces[p] as RimRun;
    for (let i = first; i <= last; i++) {
      const distance = ((x[i] as number) - cx) ** 2 + ((y[i] as number) - cy) ** 2;
      if (distance >= least) continue;
      least = distance;
      found.count = 1;
      found.index[0] = i;
      found.piece[0] = p;
      found.height[0] = 0;
      found.slack[0] = 0;
    }
  }
}
