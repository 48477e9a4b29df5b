import {
  solveSeat,
  type SeatLoad,
  type SeatOutcome,
  type SeatSolution,
} from '../../mechanics/index.ts';
import { OVERTURNED_TURN, SLID_AWAY } from '../../physics/rocking-constants.ts';
import { loadInSpace } from '../../physics/rocking-plane.ts';
import type { RockingReading } from '../../physics/rocking-reading.ts';
import type { PlanePose } from '../../physics/rocking-springs.ts';
import { angleAt, loadAt, planeOf, type Hold, type Seat } from './seat.ts';
import type { RockingSetting } from './settings.ts';

/** A hold as it stands. */
export interface PosedHold extends Hold {
  /** N, what it is pulled with; negative where it is pressed */
  readonly pull: number;
  readonly isSlipping: boolean;
}

/** How a socket lies, from the simulation or from the solver: what a picture and the readings need. */
export interface Posed {
  readonly state: 'at rest' | 'moving' | 'overturned' | 'sliding';
  readonly pose: PlanePose;
  /** rad */
  readonly contactAngle: number;
  /** N */
  readonly sideForce: number;
  /** mm */
  readonly liftOff: number;
  readonly pressIn: number;
  readonly holds: readonly PosedHold[];
}

const endings: Readonly<Record<SeatOutcome, Posed['state']>> = {
  balanced: 'at rest',
  overturned: 'overturned',
  sliding: 'sliding',
  unsettled: 'moving',
};
/** A keel grips in so many places along it. */
const KEEL_PIECES = 8;
/** A hold within this share of its strength slips. */
const AT_STRENGTH = 1e-6;

/** The load that the ball is measured to put on a socket. */
export function measuredLoad(setting: RockingSetting, { loadOnSocket }: RockingReading): SeatLoad {
  return loadInSpace(planeOf(setting), loadOnSocket.force, loadOnSocket.at);
}

/** Where the solver has the socket under a load, or under the one that the shape alone asks for. Without a rest it is drawn as the simulation leaves it: tipped, or slid off. */
export function posedByTheory(
  setting: RockingSetting,
  seat: Seat,
  load: SeatLoad = loadAt(setting),
): Posed {
  const solution = solveSeat({ elements: seat.elements, load });
  const state = endings[solution.outcome];
  const isUpright = setting.plane === 'top-bottom';
  const along = isUpright ? load.force[1] : load.force[0];
  const side = Math.sign(setting.place) || 1;
  return {
    state,
    pose: state === 'at rest' ? planePose(solution, isUpright) : lostPose(state, side),
    contactAngle: angleAt(setting),
    sideForce: along,
    liftOff: solution.liftOff,
    pressIn: solution.pressIn,
    holds: posedHolds(
      seat.holds,
      solution.elements.map(({ normalForce }) => normalForce),
    ),
  };
}

export function posedBySim(reading: RockingReading, seat: Seat): Posed {
  const { state, pose, contactAngle, sideForce, liftOff, pressIn, forces } = reading;
  const holds = posedHolds(seat.holds, forces);
  return { state, pose, contactAngle, sideForce, liftOff, pressIn, holds };
}

function posedHolds(holds: readonly Hold[], forces: readonly number[]): readonly PosedHold[] {
  return holds.map((hold) => {
    const pull = hold.elements.reduce((sum, i) => sum - (forces[i] ?? 0), 0);
    return { ...hold, pull, isSlipping: pull >= hold.strength * (1 - AT_STRENGTH) };
  });
}

/** The solver’s turns about x and y, as the plane counts its own. */
function planePose({ displacement, rotation }: SeatSolution, isUpright: boolean): PlanePose {
  return isUpright
    ? { x: displacement[1], z: displacement[2], turn: rotation[0] }
    : { x: displacement[0], z: displacement[2], turn: 0 - rotation[1] };
}

function lostPose(state: Posed['state'], side: number): PlanePose {
  if (state === 'sliding') return { x: side * SLID_AWAY, z: 0, turn: 0 };
  return { x: 0, z: 0, turn: -side * OVERTURNED_TURN };
}

/** The hold that is nearest to its strength; null where there is none. */
export function hardestPulled({ holds }: Posed): PosedHold | null {
  return holds.reduce<PosedHold | null>(
    (most, hold) =>
      most === null || hold.pull / hold.strength > most.pull / most.strength ? hold : most,
    null,
  );
}

/** Whether the holds are the eighths of a keel, seen along it. */
export function isPiece({ holds }: Posed): boolean {
  return holds.length === KEEL_PIECES;
}

/** How it stands, in a word. */
export const stateWord = ({ state }: Posed): string =>
  state === 'sliding' ? 'slid off' : state === 'overturned' ? 'overturned' : state;
