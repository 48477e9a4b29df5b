import type { Point } from '../../figures/view.ts';

/** What can be taken hold of on the plan: a peg by its place in the list, the keel, and where the ball presses. */
export type Held = number | 'keel' | 'load';

/** A button over one of them. */
export interface PlanHandle<Which extends Held> {
  readonly which: Which;
  /** Its middle, mm */
  readonly at: Point;
  /** px */
  readonly width: number;
  readonly height: number;
  readonly label: string;
}
