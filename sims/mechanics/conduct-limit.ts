import type { Grid } from './conduct-grid.ts';

/** Heat that passes, J: on from each cell to the next, and in through the ends. */
export interface Passed {
  readonly between: Float64Array;
  readonly left: number;
  readonly right: number;
}

/**
 * Moves heat on top of a step so that no cell leaves [low, high]: what passes at a face is cut by the share that the
 * cells at both its sides have room for. As much leaves one cell as enters the next, so no heat is lost.
 *
 * @returns what did pass
 *
 * The limiter of flux-corrected transport (Zalesak 1979, from memory).
 */
export function moveWithin(
  { count, capacity }: Grid,
  temperatures: Float64Array,
  wanted: Passed,
  low: number,
  high: number,
): Passed {
  const last = count - 1;
  const room = new Float64Array(count);
  const store = new Float64Array(count);
  const into = ({ between, left, right }: Passed, i: number): readonly [number, number] => [
    i === 0 ? left : (between[i - 1] ?? 0),
    i === last ? right : -(between[i] ?? 0),
  ];
  for (let i = 0; i < count; i++) {
    const [left, right] = into(wanted, i);
    const [warmth, held] = [temperatures[i] ?? 0, capacity[i] ?? 0];
    room[i] = share(held * (high - warmth), Math.max(0, left) + Math.max(0, right));
    store[i] = share(held * (warmth - low), Math.max(0, -left) + Math.max(0, -right));
  }
  // What is beyond an end gives and takes without limit.
  const allowed = (heat: number, from: number, to: number): number => {
    const [giver, taker] = heat > 0 ? [from, to] : [to, from];
    return heat * Math.min(store[giver] ?? 1, room[taker] ?? 1);
  };
  const moved: Passed = {
    between: wanted.between.map((heat, i) => allowed(heat, i, i + 1)),
    left: allowed(wanted.left, -1, 0),
    right: allowed(wanted.right, -1, last),
  };
  for (let i = 0; i < count; i++) {
    const [left, right] = into(moved, i);
    temperatures[i] = (temperatures[i] ?? 0) + (left + right) / (capacity[i] ?? 1);
  }
  return moved;
}

function share(there: number, wanted: number): number {
  return wanted <= Math.max(0, there) ? 1 : Math.max(0, there) / wanted;
}
