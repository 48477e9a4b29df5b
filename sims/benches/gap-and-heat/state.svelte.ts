import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import { nearestAllowed } from '../../shared/range.ts';
import { heatOf, highestOf, profileAt } from './heat.ts';
import { mantlesOf } from './mantle.ts';
import { defaultGap, ranges, type GapNumber, type GapSetting } from './settings.ts';

/** Seconds of setting that pass in one of the visitor’s. */
const PACE = 60;

/** Gap and Heat: what the visitor set, what follows, and the moment that is shown. One for each figure on a page. */
export class GapAndHeat {
  setting = $state.raw<GapSetting>(defaultGap);
  /** Said about a link that was not taken whole, or ''. */
  problem = $state('');
  isPlaying = $state(false);

  readonly mantles = $derived(mantlesOf(this.setting));
  /** What the heat depends on, as text: a moment passes, and nothing has to be computed anew. */
  readonly #heated = $derived(JSON.stringify({ ...this.mantles.setting, time: 0, measured: 0 }));
  readonly heats = $derived.by(() => {
    const setting = JSON.parse(this.#heated) as GapSetting;
    return { pegs: heatOf(setting, 'pegs'), keel: heatOf(setting, 'keel') };
  });
  readonly heat = $derived(this.heats[this.mantles.setting.measured]);
  readonly profile = $derived(profileAt(this.heat, this.mantles.setting, this.setting.time));
  readonly #place = $derived(this.mantles.setting.measured);
  readonly highest = $derived(
    highestOf(this.heats[this.#place], {
      ...(JSON.parse(this.#heated) as GapSetting),
      measured: this.#place,
    }),
  );
  readonly message = $derived(`${this.problem} ${this.mantles.message}`.trim());

  readonly #loop = createFrameLoop((seconds) => this.#frame(seconds));

  constructor(initial: Partial<GapSetting> = {}) {
    this.setting = { ...defaultGap, ...initial };
  }

  change(change: Partial<GapSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.problem = '';
  }

  changeNumber(field: GapNumber, value: number): void {
    // What did not fit is forgotten once something else is turned.
    const { time } = this.setting;
    this.change({ ...this.mantles.setting, time, [field]: nearestAllowed(value, ranges[field]) });
  }

  moveTo(time: number): void {
    this.pause();
    this.changeNumber('time', time);
  }

  /** From the beginning once it is over; at once to the end where the visitor asked for stillness. */
  play(): void {
    const { max } = ranges.time;
    if (wantsStillness()) {
      this.change({ time: max });
      return;
    }
    if (this.setting.time >= max) this.change({ time: 0 });
    this.isPlaying = true;
    this.#loop.wake();
  }

  pause(): void {
    this.isPlaying = false;
    this.#loop.sleep();
  }

  reset(): void {
    this.pause();
    this.change(defaultGap);
  }

  /** In sight again. */
  wake(): void {
    if (this.isPlaying) this.#loop.wake();
  }

  sleep(): void {
    this.#loop.sleep();
  }

  #frame(seconds: number): boolean {
    const { max } = ranges.time;
    const time = Math.min(max, this.setting.time + PACE * seconds);
    this.setting = { ...this.setting, time };
    if (time >= max) this.isPlaying = false;
    return this.isPlaying;
  }
}
