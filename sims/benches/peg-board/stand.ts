import {
  solveSeat,
  type SeatElementAnswer,
  type SeatOutcome,
  type Vector3,
} from '../../mechanics/index.ts';
import { BACK, loadOf, type HoldElements, type Seat } from './seat.ts';
import type { BallLoad } from './settings.ts';
import { extremeOf, gapAt, tiltOf, type Tilt } from './tilt.ts';

export { gapAt, type Tilt };

/** What a peg or the keel bears. */
export interface HoldReading {
  /** Along its axis, N; negative where it is pressed in */
  readonly pull: number;
  /** Against its sides, N */
  readonly sideways: number;
  /** Pull-out ÷ pull; of a keel at the place that is worst off. Infinity where nothing pulls. */
  readonly margin: number;
  readonly isSlipping: boolean;
  /** N at which all of it comes out */
  readonly strength: number;
}

/** A socket under its load. Unless `outcome` is `balanced` the numbers say nothing, and none of them is shown. */
export interface Stand {
  readonly outcome: SeatOutcome;
  readonly displacement: Vector3;
  readonly rotation: Vector3;
  readonly tilt: Tilt;
  /** Greatest gap, straight off the back, mm, 0 and up */
  readonly liftOff: number;
  /** Greatest press-in, mm, 0 and up */
  readonly pressIn: number;
  /** N/mm² */
  readonly peakPressure: number;
  readonly contactShare: number;
  readonly pegs: readonly HoldReading[];
  readonly keel: HoldReading | null;
}

/** Where the socket comes to rest. */
export function standOf(seat: Seat, load: BallLoad): Stand {
  const solution = solveSeat({ elements: seat.elements, load: loadOf(seat.curve, load) });
  const { outcome, displacement, rotation, elements, contactShare } = solution;
  const tilt = tiltOf(solution, seat.backRadius, BACK);
  const gaps = [...seat.edge, extremeOf(seat.edge, tilt)].map((at) => gapAt(tilt, at));
  const pressIn = Math.max(0, -Math.min(...gaps));
  return {
    outcome,
    displacement,
    rotation,
    tilt,
    liftOff: Math.max(0, ...gaps),
    pressIn,
    peakPressure: seat.bedStiffness * pressIn,
    contactShare,
    pegs: seat.pegs.map((hold) => readingOf(hold, seat, elements)),
    keel: seat.keel === null ? null : readingOf(seat.keel, seat, elements),
  };
}

function readingOf(
  { grips, sides, strength }: HoldElements,
  seat: Seat,
  answers: readonly SeatElementAnswer[],
): HoldReading {
  const forces = grips.map((i) => answers[i]?.normalForce ?? 0);
  const margins = grips.map((i, at) => {
    const force = forces[at] ?? 0;
    return force < 0 ? (seat.elements[i]?.strength ?? 0) / -force : Infinity;
  });
  let [x, y] = [0, 0];
  for (const i of sides) {
    const force = answers[i]?.normalForce ?? 0;
    x += force * (seat.elements[i]?.normal[0] ?? 0);
    y += force * (seat.elements[i]?.normal[1] ?? 0);
  }
  return {
    pull: 0 - forces.reduce((sum, force) => sum + force, 0),
    sideways: Math.hypot(x, y),
    margin: Math.min(...margins),
    isSlipping: grips.some((i) => answers[i]?.state === 'slipping'),
    strength,
  };
}

/** Movement of the socket in an upright plane through its middle, as its section shows it. */
export function poseIn(
  { displacement, rotation }: Pick<Stand, 'displacement' | 'rotation'>,
  bearing: number,
): { readonly x: number; readonly z: number; readonly turn: number } {
  const turn = (bearing * Math.PI) / 180;
  const [along, up] = [Math.cos(turn), Math.sin(turn)];
  return {
    x: displacement[0] * along + displacement[1] * up,
    z: displacement[2],
    turn: rotation[0] * up - rotation[1] * along,
  };
}

export const isRest = ({ outcome }: Pick<Stand, 'outcome'>): boolean => outcome === 'balanced';
