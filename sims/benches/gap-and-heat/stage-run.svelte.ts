import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import type { Sleeper } from '../../shared/in-sight.ts';
import { runSpan, stillTime } from './stage-times.ts';

/** Setting that passes in a second of the visitor’s, s: a run ends within five. */
const PACE = 300;

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
