import type { Point } from '../../figures/view.ts';
import type { ScapulaView } from './layout.ts';
import type { ForceReading, PlaneForce, PullReading } from './reading.ts';

/** A pull on the sheet, set to the head of the one before. */
export interface DrawnPull {
  readonly pull: PullReading;
  readonly from: Point;
  readonly to: Point;
}

/** The pulls head to tail from the ball's centre, and the net force that closes them. */
export interface ForceChain {
  readonly from: Point;
  readonly pulls: readonly DrawnPull[];
  readonly net: Point;
  /** Drawing units per newton. */
  readonly perNewton: number;
}

/** What the longest way across the chain may measure on the sheet, mm. */
const LONGEST = 43;
const STEPS = [1, 1.5, 2, 3, 5, 7, 10];

/** N that the arrows are drawn to: a round number not below any place of the chain. */
export function ceilingOf({ pulls }: ForceReading): number {
  let [aside, inward, most] = [0, 0, 20];
  for (const pull of pulls) {
    aside += pull.aside;
    inward += pull.inward;
    most = Math.max(most, Math.hypot(aside, inward));
  }
  const decade = 10 ** Math.floor(Math.log10(most));
  return (STEPS.find((step) => step * decade >= most) ?? 10) * decade;
}

export function forceChain(
  reading: ForceReading,
  view: ScapulaView,
  from: Point,
  ceiling: number,
): ForceChain {
  const perNewton = (LONGEST * view.scale) / ceiling;
  const move = ({ aside, inward }: PlaneForce): Point => ({
    x: perNewton * (aside * view.aside.x - inward * view.out.x),
    y: perNewton * (aside * view.aside.y - inward * view.out.y),
  });
  let tail = from;
  const pulls = reading.pulls.map((pull) => {
    const step = move(pull);
    const drawn = { pull, from: tail, to: { x: tail.x + step.x, y: tail.y + step.y } };
    tail = drawn.to;
    return drawn;
  });
  return { from, pulls, net: tail, perNewton };
}

/** The pull an arrow from a tail to a point stands for: N, and degrees from straight medial. */
export function pullBetween(
  tail: Point,
  head: Point,
  view: ScapulaView,
  perNewton: number,
): { readonly size: number; readonly turn: number } {
  const [x, y] = [(head.x - tail.x) / perNewton, (head.y - tail.y) / perNewton];
  const aside = x * view.aside.x + y * view.aside.y;
  const inward = -(x * view.out.x + y * view.out.y);
  return {
    size: Math.hypot(aside, inward),
    turn: (Math.atan2(aside, inward) * 180) / Math.PI,
  };
}
