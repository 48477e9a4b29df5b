import type { Grid } from './conduct-grid.ts';

/** Heat that comes in through the ends, J. */
export interface Ends {
  readonly left: number;
  readonly right: number;
}

/**
 * Brings temperatures back into [low, high] and loses no heat: half of what is beyond a bound goes to the next cells to
 * the left that have room for it, half to those to the right. What finds no room leaves through the ends.
 *
 * @returns what came in through the ends by that; mostly nothing
 */
export function keepWithin(grid: Grid, row: Float64Array, low: number, high: number): Ends {
  const over = bring(grid, row, high, 1);
  const under = bring(grid, row, low, -1);
  return { left: over.left + under.left, right: over.right + under.right };
}

/** What is left after so many ways from end to end is rounding, or more than there is room for. */
const MOST_WAYS = 60;

/** Only temperatures beyond the bound, in the direction of the sign, are brought to it. */
function bring(
  { count, capacity, left, right }: Grid,
  row: Float64Array,
  bound: number,
  sign: 1 | -1,
): Ends {
  const excess = new Float64Array(count);
  const room = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const beyond = sign * ((row[i] ?? 0) - bound);
    excess[i] = Math.max(0, beyond) * (capacity[i] ?? 0);
    room[i] = Math.max(0, -beyond) * (capacity[i] ?? 0);
    if (beyond > 0) row[i] = bound;
  }
  // Both go at once and each may have half the room, so that neither side comes first.
  let [rightward, leftward] = [0, 0];
  for (let way = 0; way < MOST_WAYS; way++) {
    const filled = new Float64Array(count);
    const fill = (i: number, carried: number): number => {
      const put = Math.min(carried, (room[i] ?? 0) / 2);
      filled[i] = (filled[i] ?? 0) + put;
      return carried - put;
    };
    for (let i = 0; i < count; i++) rightward = fill(i, rightward + (excess[i] ?? 0) / 2);
    for (let i = count - 1; i >= 0; i--) leftward = fill(i, leftward + (excess[i] ?? 0) / 2);
    excess.fill(0);
    for (let i = 0; i < count; i++) {
      room[i] = Math.max(0, (room[i] ?? 0) - (filled[i] ?? 0));
      row[i] = (row[i] ?? 0) + (sign * (filled[i] ?? 0)) / (capacity[i] ?? 1);
    }
    // What has come to an end turns back.
    [rightward, leftward] = [leftward, rightward];
    if (rightward + leftward === 0) break;
  }
  const both = left.conductance + right.conductance;
  const out = both === 0 ? 0 : (-sign * (rightward + leftward)) / both;
  return { left: out * left.conductance, right: out * right.conductance };
}
