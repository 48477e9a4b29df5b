import type { Point } from '../../../figures/view.ts';
import type { MeshArrays, Spot } from '../../round-the-rim/solid/bands.ts';
import { riseOf } from '../back.ts';
import { linesOf } from '../bands.ts';
import { BACK } from '../seat.ts';
import { gapAt, isInside, type Tilt } from '../tilt.ts';
import { carriedSpot, type Move } from './board-mesh.ts';

/** Hatching of what gapes: lines this far apart, and one more between where it gapes more than half as far as it does anywhere. */
const APART = 2.6;
const ALONG = 0.6;
/** The lines lie this far off the back, mm, so that it does not cover them. */
const OFF = 0.07;
const LEAST_GAP = 5e-4;

type Line = readonly Point[];

/** The hatching of the part of a back that gapes, as lines in plan, mm. */
export function openHatches(edge: readonly Point[], tilt: Tilt, liftOff: number): readonly Line[] {
  if (liftOff < LEAST_GAP) return [];
  const reach = edge.reduce((most, { x, y }) => Math.max(most, Math.hypot(x, y)), 0);
  const count = Math.ceil((2 * reach) / APART);
  return Array.from({ length: 2 * count + 1 }, (_, i) => {
    const least = i % 2 === 0 ? 0 : liftOff / 2;
    const off = ((i - count) * APART) / 2;
    return runs(slantedLine(off, reach), (at) => gapAt(tilt, at) > least && isInside(edge, at));
  }).flat();
}

/** Where a back neither presses nor gapes, as lines in plan. */
export function zeroLines(edge: readonly Point[], tilt: Tilt): readonly Line[] {
  return linesOf(edge, tilt, [0]).map(({ line }) => line);
}

/** Lines of the plan as flat strips on the moved back. */
export function strips(lines: readonly Line[], width: number, move: Move, tilt: Tilt): MeshArrays {
  const positions: number[] = [];
  const indices: number[] = [];
  const put = ({ x, y }: Point): void => {
    const spot: Spot = [x, y, BACK + riseOf(tilt.radius ?? Infinity, { x, y }) - OFF];
    positions.push(...carriedSpot(move, spot));
  };
  for (const line of lines) {
    const start = positions.length / 3;
    line.forEach((at, i) => {
      const [before, after] = [line[i - 1] ?? at, line[i + 1] ?? at];
      const size = Math.hypot(after.x - before.x, after.y - before.y) || 1;
      const across = {
        x: (-(after.y - before.y) * width) / 2 / size,
        y: ((after.x - before.x) * width) / 2 / size,
      };
      put({ x: at.x + across.x, y: at.y + across.y });
      put({ x: at.x - across.x, y: at.y - across.y });
      if (i === 0) return;
      const [a, b] = [start + 2 * (i - 1), start + 2 * i];
      indices.push(a, a + 1, b, a + 1, b + 1, b);
    });
  }
  return { positions, indices, shares: [] };
}

/** A line at 45°, as the plan is hatched, `off` mm from the middle. */
function slantedLine(off: number, reach: number): Line {
  const count = Math.ceil((2 * reach) / ALONG);
  return Array.from({ length: count + 1 }, (_, i) => {
    const along = -reach + i * ALONG;
    return { x: (along - off) * Math.SQRT1_2, y: (along + off) * Math.SQRT1_2 };
  });
}

/** The stretches of a line on which something is so; single places are left out. */
function runs(line: Line, isSo: (at: Point) => boolean): readonly Line[] {
  const found: Point[][] = [];
  let run: Point[] = [];
  for (const at of line) {
    if (isSo(at)) run.push(at);
    else {
      found.push(run);
      run = [];
    }
  }
  return [...found, run].filter(({ length }) => length > 1);
}
