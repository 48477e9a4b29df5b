/** A stroke on an axis: where it stands, in drawing units, and its number. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** The part of a d3 scale that ticks are made from. */
interface TickScale {
  (value: number): number;
  ticks(count: number): number[];
  tickFormat(count: number): (value: number) => string;
}

/**
 * About `count` round strokes on a scale.
 *
 * @param text how a value is written; as the scale's steps call for where it is left out
 */
export function ticksOf(
  scale: TickScale,
  count: number,
  text: (value: number) => string = scale.tickFormat(count),
): readonly Tick[] {
  return scale.ticks(count).map((value) => ({ at: scale(value), text: text(value) }));
}
