import {
  inDegrees,
  radians,
  type ForceReading,
  type PlaneForce,
} from '../../sims/benches/force-and-arc/reading.ts';
import { forceChain } from '../../sims/benches/force-and-arc/arrows.ts';
import type { ScapulaView } from '../../sims/benches/force-and-arc/layout.ts';
import { planes } from '../../sims/benches/force-and-arc/planes.ts';
import { readAct } from '../../sims/benches/force-and-arc/acts.ts';
import type { ForceSetting } from '../../sims/benches/force-and-arc/settings.ts';
import {
  frictionAngle,
  peakStabilityRatio,
  rimContactTranslation,
} from '../../sims/geometry/index.ts';
import type { Point } from '../../sims/figures/view.ts';
import { restPosition } from '../../sims/mechanics/index.ts';
import { factRange, factValue } from '../fact-value.ts';

/*
 * Everything the lesson shows, computed. Two cups as wide as a face is from front to back: one as deep as bony sockets
 * are from top to bottom, one half as deep, near what sockets hold forward. Pulls and situations are teaching values.
 */

export const WEAK = 20;
export const TURNED = 15;

export const shallowDepth = 2;

/** The bench's answer for a straight cup under balanced pulls, changed in so much. */
export const under = (change: Partial<ForceSetting>): ForceReading => readAct({ change });

export const balanced = under({});
export const turnedBack = under({ version: TURNED });
export const shallow = under({ depth: shallowDepth });
export const shallowBack = under({ depth: shallowDepth, version: TURNED });
export const frontWeak = under({ frontCuffSize: WEAK });
export const backWeak = under({ backCuffSize: WEAK });
export const frontWeakBack = under({ frontCuffSize: WEAK, version: TURNED });
export const backWeakBack = under({ backCuffSize: WEAK, version: TURNED });
export const upward = under({ plane: 'front', inclination: 10 });

export const cup = balanced.cup.socket;
export const shallowCup = shallow.cup.socket;
export const ballRadius = balanced.cup.ballRadius;
export const mismatch = cup.curvatureRadius - ballRadius;

/** The same cup with a smaller ball: more play, the same arc. */
export const smallBall = under({ version: TURNED, ballDiameter: 40 });

/** Of a number the bench gives only under a force that holds the ball. */
export function held<T>(value: T | null): T {
  if (value === null) throw new Error('the ball is not held here');
  return value;
}

export const angleOf = (reading: ForceReading): number => Math.abs(held(reading.angle));
export const restOf = (reading: ForceReading): number => Math.abs(held(reading.translation));

/** What friction adds to the arc, rad. */
export const frictionAdds = frictionAngle(factValue('friction-metal-polyethylene-low-pressure'));

/** One turn of the socket under a straight pull, in both cups. */
export interface VersionRow {
  /** Degrees, backward. */
  readonly version: number;
  readonly deep: ForceReading;
  readonly shallow: ForceReading;
}

export const versionRows: readonly VersionRow[] = [0, 5, 10, 15, 20, 25, 30].map((version) => ({
  version,
  deep: under({ version }),
  shallow: under({ version, depth: shallowDepth }),
}));

export const deepRatio = peakStabilityRatio(cup);
export const shallowRatio = peakStabilityRatio(shallowCup);

/** Where the ball goes when the socket is turned back, as an option of the prediction. */
export const turnedBackOutcome =
  turnedBack.state === 'over the rim'
    ? 'over'
    : Math.abs(held(turnedBack.translation)) < 0.05
      ? 'middle'
      : held(turnedBack.translation) > 0
        ? 'towards-back'
        : 'towards-front';

/** To which side the net force turns when the front cuff weakens. */
export const weakFrontOutcome =
  Math.abs(frontWeak.lean) < radians(0.5) ? 'stays' : frontWeak.lean < 0 ? 'front' : 'back';

/** By how much the bench's net force shrinks with the front cuff, as a share of one. */
export const lostForce = 1 - frontWeak.netSize / balanced.netSize;

/** Share of the gap to the rim that the turned-back ball has used. */
export const usedGap = restOf(turnedBack) / turnedBack.rimContact;

export { inDegrees, radians };

/** The ball of the drawings of rest and margin: small, so that its travel can be seen. */
const drawnAngle = radians(TURNED);
const drawnRadius = 18;
const drawnRest = restPosition({ socket: cup, ballRadius: drawnRadius, forceAngle: drawnAngle });
export const drawn = {
  ballRadius: drawnRadius,
  angle: drawnAngle,
  rest: held(drawnRest.translation),
  rimContact: rimContactTranslation(cup, drawnRadius),
};

/** Sheet of the small stills, and the force their arrows are drawn to, N. */
export const STILL = { width: 320, height: 332, ceiling: 450 } as const;
/** A turn beyond the deep cup's arc, degrees. */
export const BEYOND = 35;

/**
 * How far the push the shallow cup holds forward strays from a straight line while its version goes from one end of the
 * laboratory’s range to the other, as a share of the whole change.
 */
export const strays = ((): number => {
  const [from, to] = [
    -factValue('anteversion-out-by-itself'),
    factValue('retroversion-out-by-itself'),
  ];
  const held = (version: number): number => Math.tan(shallowCup.halfArc + radians(version));
  const change = held(to) - held(from);
  const offLine = Array.from({ length: 101 }, (_, i) => {
    const share = i / 100;
    return Math.abs(held(from + share * (to - from)) - (held(from) + share * change));
  });
  return Math.max(...offLine) / change;
})();

/** Ends of the confidence interval of the odds of bone loss. */
export const odds = factRange('retroversion-osteolysis-odds');

/** The pulls of a reading head to tail: where each begins and ends, N. */
export function chainOf({
  pulls,
}: ForceReading): readonly (readonly [from: PlaneForce, to: PlaneForce])[] {
  let from: PlaneForce = { aside: 0, inward: 0 };
  return pulls.map(({ aside, inward }) => {
    const start = from;
    from = { aside: start.aside + aside, inward: start.inward + inward };
    return [start, from] as const;
  });
}

/** N that the arrows of stills which stand side by side are drawn to. */
export const PULLED = STILL.ceiling;

/** Straight in as the drawings from above have it: along the blade, up to the right. */
const BLADE = ((planes.above.outward - 180) * Math.PI) / 180;

/** The same as a direction on the screen, rad clockwise from the right. */
export const INWARD = -BLADE;

/** A force on the sheet of a polygon, from the tail of the first arrow. */
export function onSheet({ inward, aside }: PlaneForce, tail: Point, perNewton: number): Point {
  const [cos, sin] = [Math.cos(BLADE), Math.sin(BLADE)];
  return {
    x: tail.x + perNewton * (inward * cos - aside * sin),
    y: tail.y - perNewton * (inward * sin + aside * cos),
  };
}

/** Heads of the front and the back pull when both start at the ball’s centre. */
export function pullsFrom(
  reading: ForceReading,
  view: ScapulaView,
  centre: Point,
  ceiling: number,
): { readonly front: Point; readonly back: Point } {
  const { perNewton } = forceChain(reading, view, centre, ceiling);
  const [front, back] = reading.pulls.map((pull) => onSheet(pull, centre, perNewton));
  return { front: front ?? centre, back: back ?? centre };
}
