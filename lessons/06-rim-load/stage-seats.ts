import { settingOf, type RockingAct } from '../../sims/benches/rocking-bench/acts.ts';
import { posedBySim, type Posed } from '../../sims/benches/rocking-bench/posed.ts';
import { runToEnd, startScene, theoryOfRocking } from '../../sims/benches/rocking-bench/run.ts';
import { seatOf, type Seat } from '../../sims/benches/rocking-bench/seat.ts';
import type { Design, RockingSetting } from '../../sims/benches/rocking-bench/settings.ts';
import { atRim, bare, onePeg, testPress, thickness, twoPegs } from './seats.ts';

/*
 * What the lecture shows besides, computed. Where the ball stands, how long it is rocked and how far a hold wears are
 * teaching values.
 */

/** Per cent of the way to the rim: where the far edge is about to lift, and beyond. */
export const QUARTER = 25;
export const BEYOND = 60;
/** Per cent of a hold that is left after long slipping. */
export const LEFT = 75;
export const CYCLES = 4;

/** A socket of the lecture, where the simulation comes to rest. */
export interface Stood {
  readonly setting: RockingSetting;
  readonly seat: Seat;
  readonly posed: Posed;
}

export function stood(place: number, design: Design = bare): Stood {
  return rested(place, design).stood;
}

function rested(place: number, design: Design) {
  const setting = settingOf({ change: { place, a: design } });
  const seat = seatOf(setting, design);
  const reading = runToEnd(startScene(setting, seat));
  return { stood: { setting, seat, posed: posedBySim(reading, seat) }, reading };
}

/** The ball at the rim: where a design presses and where it is pulled, mm from the middle, and the pull, N. */
export interface Levers extends Stood {
  readonly pull: number;
  readonly presses: number;
  readonly pulls: number;
  /** Where the line of the press meets the back */
  readonly foot: number;
  /** Of load and pull about the middle of all that presses, mm */
  readonly loadLever: number;
  readonly pullLever: number;
}

export function leversOf(design: Design): Levers {
  const { stood: there, reading } = rested(atRim.place, design);
  const along = there.seat.elements.flatMap(({ position, normal }, i) =>
    normal[2] === 1 ? [{ at: position[1], force: reading.forces[i] ?? 0 }] : [],
  );
  const resultant = (sign: number) => {
    const some = along.filter(({ force }) => sign * force > 0);
    const force = some.reduce((sum, one) => sum + one.force, 0);
    return { force, at: some.reduce((sum, one) => sum + one.at * one.force, 0) / force };
  };
  const [pressed, pulled] = [resultant(1), resultant(-1)];
  const { force, at } = reading.loadOnSocket;
  const foot = at.x - (force.x / force.z) * (at.z + thickness);
  return {
    ...there,
    pull: -pulled.force,
    presses: pressed.at,
    pulls: pulled.at,
    foot,
    loadLever: foot - pressed.at,
    pullLever: pressed.at - pulled.at,
  };
}

export const oneLevers = leversOf(onePeg);
export const twoLevers = leversOf(twoPegs);

/** Two sockets with the ball at the rim, one peg and two. */
export const pairAt = (load: number, left = 100): RockingAct['change'] => ({
  place: atRim.place,
  press: load,
  left,
  cycles: CYCLES,
  a: onePeg,
  b: twoPegs,
});

/** Gaps of one peg at each load of a rocking in which its hold wears, mm; and by the solver under the loads measured. */
export const worn = wornPeg();

function wornPeg(): { readonly gaps: readonly number[]; readonly solved: readonly number[] } {
  const setting = settingOf({ change: pairAt(testPress, LEFT) });
  const seat = seatOf(setting, setting.a);
  const scene = startScene(setting, seat);
  scene.rock(setting.cycles, setting.place / 100);
  const reading = runToEnd(scene, setting.cycles);
  return {
    gaps: reading.rims.map(({ liftOff }) => liftOff),
    solved: theoryOfRocking(setting, seat, reading),
  };
}
