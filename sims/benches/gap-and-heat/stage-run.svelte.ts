import type { CementHeat } from '../../mechanics/index.ts';
import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import type { Sleeper } from '../../shared/in-sight.ts';

/** Setting that is shown in a run, s, and how much of it in a second of the visitor’s: it ends within five. */
export const runSpan = 1440;
const PACE = 300;
/** What stands still is shown at about its hottest, s. */
export const stillTime = 366;
const HOT = 47;

/** A moment of the setting for the back row or a patient: it stands, or runs once from the beginning. */
export class SettingRun implements Sleeper {
  /** s since the cement went in */
  time = $state(stillTime);
  isRunning = $state(false);
  readonly #loop = createFrameLoop((seconds) => {
    this.time = Math.min(runSpan, this.time + PACE * seconds);
    this.isRunning = this.time < runSpan;
    return this.isRunning;
  });

  /** From the beginning; at once to the end where the visitor asked for stillness. */
  begin(): void {
    this.time = wantsStillness() ? runSpan : 0;
    this.isRunning = this.time < runSpan;
    if (this.isRunning) this.#loop.wake();
  }

  hold(time: number): void {
    this.isRunning = false;
    this.#loop.sleep();
    this.time = time;
  }

  /** In sight again. */
  wake(): void {
    if (this.isRunning) this.#loop.wake();
  }

  sleep(): void {
    this.#loop.sleep();
  }
}

/** The bone’s surface up to a moment: how hot it has been, °C, and how long above 47 °C, s. */
export function boneUntil(
  { histories: { times, bone } }: Pick<CementHeat, 'histories'>,
  time: number,
): { readonly highest: number; readonly above: number } {
  let [highest, above] = [-Infinity, 0];
  for (let i = 0; i < times.length && (times[i] ?? 0) <= time; i++) {
    const here = bone[i] ?? NaN;
    highest = Math.max(highest, here);
    if (here > HOT) above += (times[i] ?? 0) - (times[i - 1] ?? 0);
  }
  return { highest, above };
}
