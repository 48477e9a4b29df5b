import {
  inDegrees,
  radians,
  readForce,
  type PlaneForce,
} from '../../sims/benches/force-and-arc/reading.ts';
import {
  balancedPulls,
  defaultSetting,
  type ForceSetting,
} from '../../sims/benches/force-and-arc/settings.ts';
import {
  frictionAngle,
  peakStabilityRatio,
  rimContactTranslation,
} from '../../sims/geometry/index.ts';
import { restPosition } from '../../sims/mechanics/index.ts';
import { factRange, factValue } from '../fact-value.ts';

/*
 * Everything the lesson shows, computed. Two cups as wide as a face is from front to back: one as deep as bony sockets
 * are from top to bottom, one half as deep, near what sockets hold forward. Pulls and situations are teaching values.
 */

export const WEAK = 20;
export const TURNED = 15;

const straight: ForceSetting = { ...defaultSetting, ...balancedPulls, plane: 'above', version: 0 };
export const shallowDepth = 2;

/** The bench's answer for the lesson's setting, changed in so much. */
export const under = (change: Partial<ForceSetting>) => readForce({ ...straight, ...change });

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

export const angleOf = (reading: typeof balanced): number => Math.abs(held(reading.angle));
export const restOf = (reading: typeof balanced): number => Math.abs(held(reading.translation));

/** What friction adds to the arc, rad. */
export const frictionAdds = frictionAngle(factValue('friction-metal-polyethylene-low-pressure'));

/** One turn of the socket under a straight pull, in both cups. */
export interface VersionRow {
  /** Degrees, backward. */
  readonly version: number;
  readonly deep: typeof balanced;
  readonly shallow: typeof balanced;
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

/** Ends of the confidence interval of the odds of bone loss. */
export const odds = factRange('retroversion-osteolysis-odds');

/** The pulls of a reading head to tail: where each begins and ends, N. */
export function chainOf({
  pulls,
}: typeof balanced): readonly (readonly [from: PlaneForce, to: PlaneForce])[] {
  let from: PlaneForce = { aside: 0, inward: 0 };
  return pulls.map(({ aside, inward }) => {
    const start = from;
    from = { aside: start.aside + aside, inward: start.inward + inward };
    return [start, from] as const;
  });
}
