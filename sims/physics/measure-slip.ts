import { createPushScene, type PushSceneOptions } from './push-scene.ts';

/** A push never takes longer than this, s of simulated time: it ends by itself well before. */
const LONGEST_PUSH = 120;
const STEPS_A_LOOK = 4;

/**
 * Pushes a ball out of a cup and measures the stability ratio at which it yields: the simulation as an instrument.
 *
 * @returns side force over compressive load; null where no side force moved the ball out
 * @throws RangeError as {@link createPushScene}; Error where the push did not end
 */
export function measureSlip(options: PushSceneOptions): number | null {
  const scene = createPushScene(options);
  scene.startPush();
  let reading = scene.read();
  while (reading.push === 'pushing') {
    if (reading.time > LONGEST_PUSH) throw new Error('the push did not end');
    for (let i = 0; i < STEPS_A_LOOK; i += 1) scene.step();
    reading = scene.read();
  }
  return reading.slipRatio;
}
