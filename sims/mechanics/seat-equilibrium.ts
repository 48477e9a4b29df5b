import {
  alwaysGrips,
  endPull,
  FREEDOMS,
  pullAt,
  stiffnessAt,
  type Springs,
} from './seat-springs.ts';
import { dot, forceLeft, gapsAt, norm, project, sideMatrix, stiffnessMatrix } from './seat-sums.ts';
import type { SeatOutcome } from './seat-types.ts';
import { symmetricEigen } from './symmetric-eigen.ts';

/** Where the body rests, or where the search for that ended. */
export interface Equilibrium {
  readonly outcome: SeatOutcome;
  /** Displacement, and turn times the arm, mm */
  readonly coordinates: Float64Array;
  /** Gap of each element over its home, mm */
  readonly gaps: Float64Array;
  /** Whether each element holds across its normal: 1 or 0. */
  readonly grips: Uint8Array;
}

/** Force left over, as a share of the load, at which the body counts as at rest; and at which the search may stop. */
const AT_REST = 1e-9;
const GOAL = 1e-12;
/** A direction whose stiffness is this share of the stiffest has none. */
const NO_STIFFNESS = 1e-12;
/** So a gap that changes by less than this share of a movement does not resist it. */
const NO_RATE = Math.sqrt(NO_STIFFNESS);
/** A force this share of the load is rounding; and so is one this share of what all springs would answer to the movement. */
const ROUNDING = 1e-10;
const ROUNDING_OF_SPRINGS = 4e-15;
const MOST_STEPS = 120;
const MOST_GRIP_CHANGES = 40;
const MOST_TRIES = 80;

/**
 * The coordinates at which the springs balance a load.
 *
 * The springs' energy is a convex, piecewise quadratic function of the six coordinates, and rest is its minimum with the
 * load's work taken off. Newton's step is taken with the springs that act where the body stands; along it the exact
 * minimum is looked for, where the force along the step, which only falls, comes to nothing. A direction in which the
 * springs have no stiffness is followed while the load pushes along it: either springs come to bear, or none ever will,
 * and then there is no rest.
 *
 * Elements without tension grip across their normal only while closed. That is not a matter of energy: it is settled
 * outside, by looking for rest, letting go what has opened and gripping what has closed, until nothing changes; after
 * many changes what opens once stays loose.
 *
 * @param load six parts, see {@link loadParts}
 * @param slips how far each element has slipped before, mm
 * @param start where to begin; the unloaded place where it is left out
 */
export function equilibrium(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  start?: Float64Array,
): Equilibrium {
  const unloaded = new Float64Array(FREEDOMS);
  const found = settled(springs, load, slips, start ?? unloaded);
  // A hair above the bed, where a load may have left the body, half the bed seems open; that there is no rest is not claimed from there.
  if (found.outcome === 'balanced' || start === undefined) return found;
  return settled(springs, load, slips, unloaded);
}

function settled(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  start: Float64Array,
): Equilibrium {
  const grips = new Uint8Array(springs.count).fill(1);
  let coordinates = start;
  for (let change = 0; ; change++) {
    const rest = restWithGrips(springs, load, slips, grips, coordinates);
    coordinates = rest.coordinates;
    if (rest.outcome !== 'balanced') return { ...rest, grips };
    const isOnlyLoosening = change >= MOST_GRIP_CHANGES / 2;
    if (!regrip(springs, rest.gaps, grips, isOnlyLoosening)) return { ...rest, grips };
    if (change > MOST_GRIP_CHANGES + springs.count) return { ...rest, outcome: 'unsettled', grips };
  }
}

/** Lets go across the normal where open, grips where closed; tells whether anything changed that matters. */
function regrip(
  springs: Springs,
  gaps: Float64Array,
  grips: Uint8Array,
  isOnlyLoosening: boolean,
): boolean {
  let isChanged = false;
  for (let i = 0; i < springs.count; i++) {
    if (springs.sideStiffness[i] === 0 || alwaysGrips(springs, i)) continue;
    const grip = (gaps[i] ?? 0) <= 0 ? 1 : 0;
    if (grip === grips[i] || (isOnlyLoosening && grip === 1)) continue;
    grips[i] = grip;
    isChanged = true;
  }
  return isChanged;
}

function restWithGrips(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  grips: Uint8Array,
  start: Float64Array,
): Omit<Equilibrium, 'grips'> {
  const q = Float64Array.from(start);
  const gaps = new Float64Array(springs.count);
  const rates = new Float64Array(springs.count);
  const side = sideMatrix(springs, grips);
  const size = norm(load);
  // Where little is left of a load, slips hold springs against each other, and their rounding is all there is.
  const least = (share: number): number =>
    Math.max(share * size, ROUNDING_OF_SPRINGS * springs.whole * Math.max(norm(q), norm(start)));
  for (let step = 0; step < MOST_STEPS; step++) {
    gapsAt(springs, q, gaps);
    const left = forceLeft(springs, load, slips, side, q, gaps);
    if (norm(left) <= least(GOAL)) return { outcome: 'balanced', coordinates: q, gaps };
    const stiffness = stiffnessMatrix(springs, slips, side, gaps);
    const rounding = least(ROUNDING);
    const way = wayOf(stiffness, left, rounding);
    project(springs, way, rates);
    if (isEndless(springs, load, slips, side, way, rates, rounding)) {
      return { outcome: endOf(way, rates), coordinates: q, gaps };
    }
    const reach = reachAlong(springs, load, slips, side, q, way, gaps, rates);
    let moved = 0;
    for (let k = 0; k < FREEDOMS; k++) {
      const before = q[k] ?? 0;
      q[k] = before + reach * (way[k] ?? 0);
      moved = Math.max(moved, Math.abs((q[k] ?? 0) - before));
    }
    if (moved === 0) break;
  }
  gapsAt(springs, q, gaps);
  const left = norm(forceLeft(springs, load, slips, side, q, gaps));
  return { outcome: left <= least(AT_REST) ? 'balanced' : 'unsettled', coordinates: q, gaps };
}

/** Newton's step, or, where the load pushes along directions without stiffness, that part of the force. */
function wayOf(stiffness: number[][], left: Float64Array, rounding: number): Float64Array {
  const { values, vectors } = symmetricEigen(stiffness);
  const stiffest = Math.max(...values, 0);
  const newton = new Float64Array(FREEDOMS);
  const loose = new Float64Array(FREEDOMS);
  vectors.forEach((vector, i) => {
    const value = values[i] ?? 0;
    const share = dot(vector, left);
    const isLoose = value <= NO_STIFFNESS * stiffest;
    const into = isLoose ? loose : newton;
    const by = isLoose ? share : share / value;
    for (let k = 0; k < FREEDOMS; k++) into[k] = (into[k] ?? 0) + by * (vector[k] ?? 0);
  });
  const looseness = norm(loose);
  if (looseness <= rounding) return newton;
  // As far as a length of the body, so that what lies on the way is met at once.
  return loose.map((part) => part / looseness);
}

/** Whether the force along a way never comes to nothing: no spring that stiffens against it, and strengths too small. */
function isEndless(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  side: number[][],
  way: Float64Array,
  rates: Float64Array,
  rounding: number,
): boolean {
  const length = norm(way);
  if (length === 0) return false;
  const sideForce = Math.abs(side.reduce((sum, row, k) => sum + (way[k] ?? 0) * dot(row, way), 0));
  if (sideForce > NO_STIFFNESS * springs.stiffest * length * length) return false;
  let force = dot(load, way);
  for (let i = 0; i < springs.count; i++) {
    const rate = rates[i] ?? 0;
    if (Math.abs(rate) <= NO_RATE * length) continue;
    const end = endPull(springs, i, rate, slips[i] ?? 0);
    if (!Number.isFinite(end)) return false;
    force -= end * rate;
  }
  return force > rounding * length;
}

/** A way without end along which gaps change lifts or tips the socket; one along which none does lets it slide. */
function endOf(way: Float64Array, rates: Float64Array): SeatOutcome {
  const least = NO_RATE * norm(way);
  return rates.some((rate) => Math.abs(rate) > least) ? 'overturned' : 'sliding';
}

/** How far along a way the force along it comes to nothing: it falls all the way, in straight pieces. */
function reachAlong(
  springs: Springs,
  load: Float64Array,
  slips: Float64Array,
  side: number[][],
  q: Float64Array,
  way: Float64Array,
  gaps: Float64Array,
  rates: Float64Array,
): number {
  const sideAtStart = side.reduce((sum, row, k) => sum + (way[k] ?? 0) * dot(row, q), 0);
  const sideRate = side.reduce((sum, row, k) => sum + (way[k] ?? 0) * dot(row, way), 0);
  const pushed = dot(load, way) - sideAtStart;
  const along = (t: number): { force: number; slope: number } => {
    let force = pushed - sideRate * t;
    let slope = -sideRate;
    for (let i = 0; i < springs.count; i++) {
      const rate = rates[i] ?? 0;
      const gap = (gaps[i] ?? 0) + t * rate;
      const slip = slips[i] ?? 0;
      force -= rate * pullAt(springs, i, gap, slip);
      slope -= rate * rate * stiffnessAt(springs, i, gap, slip);
    }
    return { force, slope };
  };
  const first = along(0).force;
  if (!(first > 0)) return 0;
  let [low, high] = [0, 1];
  let at = along(high);
  for (let i = 0; at.force > 0 && i < MOST_TRIES; i++) {
    low = high;
    high *= 2;
    at = along(high);
  }
  let t = low === 0 ? high : low;
  for (let i = 0; i < MOST_TRIES; i++) {
    at = along(t);
    if (Math.abs(at.force) <= GOAL * 0.01 * first) break;
    if (at.force > 0) low = t;
    else high = t;
    const next = t - at.force / at.slope;
    t = next > low && next < high ? next : (low + high) / 2;
    if (high - low <= 1e-15 * high) break;
  }
  return t;
}
