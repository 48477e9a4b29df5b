import { positive } from '../../sims/geometry/numeric.ts';

/** A group of equal springs that a stiff plate pulls on, without anything under the plate. */
export interface ElasticGroup {
  /** Pull of each, N, in the order of their places; below 0 where one is pressed */
  readonly pulls: readonly number[];
  /** Sum of the squares of their distances from the middle of the group, mm² */
  readonly squares: number;
  /** Turn of the plate, rad */
  readonly turn: number;
}

/**
 * What each of a group of equal holds bears: a pull straight out is shared alike, a moment in proportion to the distance
 * from the middle of the group, T = P/n + M d / Σd².
 *
 * @param places of the holds along the direction in which the plate tips, mm, from anywhere
 * @param stiffness of each along its axis, N/mm, above 0
 * @param pull straight out, N
 * @param moment about the middle of the group, N·mm; it pulls at those of greater place
 * @throws RangeError for no holds, or holds that all stand in one place under a moment: nothing then resists it
 *
 * Derivation: springs in a row under a rigid plate; balance of forces and of moments. Handbook formula of anchor groups.
 */
export function elasticGroup(
  places: readonly number[],
  stiffness: number,
  { pull, moment }: { readonly pull: number; readonly moment: number },
): ElasticGroup {
  positive('stiffness', stiffness, 'N/mm');
  const count = places.length;
  if (count === 0) throw new RangeError('places is empty; allowed: one place and more');
  const middle = places.reduce((sum, place) => sum + place, 0) / count;
  const squares = places.reduce((sum, place) => sum + (place - middle) ** 2, 0);
  if (squares === 0 && moment !== 0) {
    throw new RangeError('places are all the same; allowed: two apart, to resist a moment');
  }
  const rate = squares === 0 ? 0 : moment / squares;
  return {
    pulls: places.map((place) => pull / count + rate * (place - middle)),
    squares,
    turn: rate / stiffness,
  };
}
