import type { Fading } from '../../mechanics/index.ts';
import type { RockingReading } from '../../physics/rocking-reading.ts';
import { createRockingScene, type RockingScene } from '../../physics/rocking-scene.ts';
import { solvedGaps } from '../../physics/rocking-solver.ts';
import { hollowOf, planeOf, type Seat } from './seat.ts';
import type { RockingSetting } from './settings.ts';

/** Way slipped over which a fading hold falls by 1/e, mm: a teaching value. */
export const FADING_WAY = 0.5;
/** More steps than any setting takes to come to rest after one move. */
const MOST_STEPS = 2400;
const STEPS_BETWEEN_LOOKS = 4;

export function fadingOf({ left }: RockingSetting): Fading | undefined {
  return left === 100 ? undefined : { residual: left / 100, over: FADING_WAY };
}

export function startScene(setting: RockingSetting, seat: Seat): RockingScene {
  const scene = createRockingScene({
    elements: seat.elements,
    plane: planeOf(setting),
    hollow: hollowOf(setting),
    ballRadius: setting.ballDiameter / 2,
    compressiveLoad: setting.press,
    fading: fadingOf(setting),
  });
  scene.setPlace(setting.place / 100);
  return scene;
}

export const isDone = ({ state, isRocking }: RockingReading): boolean =>
  state === 'overturned' || state === 'sliding' || (state === 'at rest' && !isRocking);

/** Runs a scene until nothing moves any more. */
export function runToEnd(scene: RockingScene, cycles = 1): RockingReading {
  let reading = scene.read();
  for (let i = 0; i < MOST_STEPS * 2 * cycles && !isDone(reading); i += STEPS_BETWEEN_LOOKS) {
    for (let k = 0; k < STEPS_BETWEEN_LOOKS; k += 1) scene.step();
    reading = scene.read();
  }
  return reading;
}

/** Gap at each rim load as the solver has it under the loads measured, mm; fewer where a load is not borne. */
export function theoryOfRocking(
  setting: RockingSetting,
  seat: Seat,
  { rims }: RockingReading,
): readonly number[] {
  return solvedGaps({
    elements: seat.elements,
    plane: planeOf(setting),
    rims,
    fading: fadingOf(setting),
    press: setting.press,
  });
}
