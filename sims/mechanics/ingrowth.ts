import { inRange, positive } from '../geometry/numeric.ts';
import type {
  BoneAnswer,
  Ingrowth,
  IngrowthPlace,
  IngrowthQuestion,
  IngrowthRates,
  IngrowthWeek,
  MotionThresholds,
} from './ingrowth-types.ts';
import { holds } from './seat-kinds.ts';
import type { SeatElement, SeatLoad, SeatSolution } from './seat-types.ts';
import { solveSeat } from './seat.ts';
import type { Vector3 } from './version.ts';

/**
 * Bone up to 28 µm and fibrous tissue from 150 µm on, in dogs (Pilliar et al. 1986, abstract). A review found no limit
 * that holds everywhere (Kohli et al. 2021, abstract).
 */
export const usualMotionThresholds: MotionThresholds = { lower: 0.028, upper: 0.15 };

const [fresh, grown] = [holds['fluted press-fit'], holds['in-grown']];

/**
 * Teaching values. Growth, seed and ceiling are set so that undisturbed growth passes through what was measured in the
 * pores of metal in dogs at 2, 4 and 16 weeks (Bobyn et al. 1999, abstract); loss is a guess. What bone does for the hold is what parts
 * an in-grown peg from a pressed-in one among the kinds of hold.
 */
export const usualIngrowthRates: IngrowthRates = {
  growth: 1.1,
  loss: 0.5,
  seed: 0.02,
  ceiling: 0.72,
  stiffening: grown.grip / fresh.grip,
  strengthening: grown.strength / fresh.strength,
};

/**
 * Bone growing onto a socket week by week, or not. A teaching model.
 *
 * In every week the seat bears its load ({@link solveSeat}), with the bone it has. Where a place moves by no more than the
 * lower threshold the share there grows, ds/dt = r (s + s₀)(1 − (s + s₀)/(c + s₀)) with seed s₀ and ceiling c; where it
 * moves more, it stays; where it moves more than the upper threshold, it falls by e^−loss. The share s makes a place
 * 1 + s (stiffening − 1) times as stiff and 1 + s (strengthening − 1) times as strong, so that what has grown in holds more
 * in the next week: a start within the threshold leads to a firm hold, one above it to none.
 *
 * Motion is how far the place moves out along its element and across it, u + θ × p less what is pressed in, for there the
 * bone goes with the socket. The give of the bone round it is counted as motion at the interface, which makes it larger than
 * it is. A place that slips is taken to slip anew every week.
 *
 * @throws RangeError for weeks that are no whole number, thresholds or rates out of range, a place that is no element, and
 *   for what {@link solveSeat} does not take
 */
export function ingrowth({
  seat,
  load,
  weeks,
  thresholds = usualMotionThresholds,
  rates,
}: IngrowthQuestion): Ingrowth {
  if (!Number.isInteger(weeks) || weeks < 0) {
    throw new RangeError(`weeks is ${weeks}; allowed: 0, 1, 2 …`);
  }
  const all = checkedRates({ ...usualIngrowthRates, ...rates });
  checkThresholds(thresholds);
  const growing = growingPlaces(seat);
  const loadOf = typeof load === 'function' ? load : (): SeatLoad => load;
  let shares: readonly number[] = growing.map(() => 0);
  const done: IngrowthWeek[] = [];
  for (let week = 1; week <= weeks; week++) {
    const passed = passWeek(withBone(seat.elements, growing, shares, all), loadOf(week - 1));
    const places = growing.map((element, i): IngrowthPlace => {
      const motion = passed.motionOf(seat.elements[element]);
      const bone = answerOf(motion, thresholds);
      return { element, motion, bone, share: nextShare(shares[i] ?? 0, bone, all) };
    });
    shares = places.map(({ share }) => share);
    done.push({
      week,
      places,
      share: mean(shares),
      motion: Math.max(0, ...places.map(({ motion }) => motion)),
      outcome: passed.outcome,
      liftOff: passed.liftOff,
    });
  }
  return {
    weeks: done,
    share: mean(shares),
    elements: withBone(seat.elements, growing, shares, all),
  };
}

/** The share after a week of growth, rest or loss; the growth law is solved, not stepped. */
export function nextShare(share: number, bone: BoneAnswer, rates: IngrowthRates): number {
  if (bone === 'stays') return share;
  if (bone === 'is lost') return share * Math.exp(-rates.loss);
  const [whole, now] = [rates.ceiling + rates.seed, share + rates.seed];
  const next = whole / (1 + (whole / now - 1) * Math.exp(-rates.growth));
  return Math.min(rates.ceiling, Math.max(share, next - rates.seed));
}

function answerOf(motion: number, { lower, upper }: MotionThresholds): BoneAnswer {
  if (motion <= lower) return 'grows';
  return motion <= upper ? 'stays' : 'is lost';
}

interface PassedWeek extends Pick<SeatSolution, 'outcome' | 'liftOff'> {
  readonly motionOf: (element: SeatElement | undefined) => number;
}

const REST: PassedWeek = { outcome: 'balanced', liftOff: 0, motionOf: () => 0 };

function passWeek(elements: readonly SeatElement[], load: SeatLoad | null): PassedWeek {
  if (load === null) return REST;
  const { converged, outcome, liftOff, displacement, rotation } = solveSeat({ elements, load });
  return {
    outcome,
    liftOff,
    motionOf: (element) =>
      converged && element !== undefined ? motionAt(element, displacement, rotation) : Infinity,
  };
}

/** Way out along the element and way across it, together, of its place that moves by u + θ × p. */
function motionAt({ position: p, normal }: SeatElement, u: Vector3, turn: Vector3): number {
  const moved = [
    u[0] + turn[1] * p[2] - turn[2] * p[1],
    u[1] + turn[2] * p[0] - turn[0] * p[2],
    u[2] + turn[0] * p[1] - turn[1] * p[0],
  ] as const;
  const out =
    (moved[0] * normal[0] + moved[1] * normal[1] + moved[2] * normal[2]) / Math.hypot(...normal);
  const across = Math.sqrt(Math.max(0, Math.hypot(...moved) ** 2 - out ** 2));
  return Math.hypot(Math.max(0, out), across);
}

/** The elements with the bone that has grown in. */
function withBone(
  elements: readonly SeatElement[],
  growing: readonly number[],
  shares: readonly number[],
  { stiffening, strengthening }: IngrowthRates,
): readonly SeatElement[] {
  const all = [...elements];
  growing.forEach((place, i) => {
    const element = elements[place];
    const share = shares[i] ?? 0;
    if (element === undefined || share === 0) return;
    const stiffer = 1 + share * (stiffening - 1);
    all[place] = {
      ...element,
      normalStiffness: element.normalStiffness * stiffer,
      tangentialStiffness: element.tangentialStiffness * stiffer,
      ...(element.strength === undefined
        ? {}
        : { strength: element.strength * (1 + share * (strengthening - 1)) }),
    };
  });
  return all;
}

function growingPlaces({ elements, growing }: IngrowthQuestion['seat']): readonly number[] {
  if (growing === undefined) {
    return elements.flatMap(({ tension }, i) => (tension === 'limited' ? [i] : []));
  }
  for (const place of growing) {
    if (elements[place] === undefined) {
      throw new RangeError(`seat.growing has ${place}; allowed: 0 to ${elements.length - 1}`);
    }
  }
  return growing;
}

function checkThresholds({ lower, upper }: MotionThresholds): void {
  inRange('thresholds.lower', lower, 0, Infinity, 'mm');
  inRange('thresholds.upper', upper, lower, Infinity, 'mm');
}

function checkedRates(rates: IngrowthRates): IngrowthRates {
  inRange('rates.growth', rates.growth, 0, Infinity, 'a week');
  inRange('rates.loss', rates.loss, 0, Infinity, 'a week');
  positive('rates.ceiling', rates.ceiling, '', 1);
  positive('rates.seed', rates.seed, '', rates.ceiling);
  inRange('rates.stiffening', rates.stiffening, 1, Infinity, '');
  inRange('rates.strengthening', rates.strengthening, 1, Infinity, '');
  return rates;
}

function mean(shares: readonly number[]): number {
  return shares.length === 0 ? 0 : shares.reduce((sum, share) => sum + share, 0) / shares.length;
}
