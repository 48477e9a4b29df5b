import { isLost } from './magnify.ts';
import { angleAt } from './seat.ts';
import { designNames, type DesignName, type RockingSetting } from './settings.ts';
import type { RockingBench } from './state.svelte.ts';

/** rad: the contact is where it was sent. */
const NEAR = 0.01;

/**
 * Lets the simulation carry the ball to where a setting has it: from where it is if the socket stays the same, else from
 * the middle of a new one.
 *
 * @param isWanted whether it still is, asked when a new socket has come to rest
 */
export async function carryTo(
  bench: RockingBench,
  next: RockingSetting,
  isWanted: () => boolean,
): Promise<void> {
  if (bench.readings !== null && bench.rocked === null && isSameSocket(bench.setting, next)) {
    bench.press(next.press);
    bench.place(next.place);
    return;
  }
  bench.change({ ...next, place: 0 });
  await bench.settle();
  if (isWanted()) bench.place(next.place);
}

function isSameSocket({ place, press, ...rest }: RockingSetting, next: RockingSetting): boolean {
  return (
    JSON.stringify({ ...next, place, press }) === JSON.stringify({ ...next, ...rest, place, press })
  );
}

/** Whether the simulation has run, and both balls are where they were sent, or their sockets lost. */
export function hasArrived(bench: RockingBench): boolean {
  return (
    bench.readings !== null && !bench.isRocking && designNames.every((name) => isThere(bench, name))
  );
}

function isThere({ shown, setting }: RockingBench, name: DesignName): boolean {
  const { state, contactAngle } = shown[name];
  if (isLost(state)) return true;
  return state === 'at rest' && Math.abs(contactAngle - angleAt(setting)) < NEAR;
}
