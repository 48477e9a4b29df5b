import { createFrameLoop, wantsStillness } from '../../shared/frame-loop.ts';
import { nearestAllowed } from '../../shared/range.ts';
import { momentAt, runOf } from './run.ts';
import { defaultWeek, ranges, WEEKS, type WeekNumber, type WeekSetting } from './settings.ts';

const WEEKS_A_SECOND = 2.5;

/** Week by Week: what the visitor set, the weeks that follow from it, and the moment looked at. */
export class WeekByWeek {
  setting = $state.raw<WeekSetting>(defaultWeek);
  message = $state('');
  isPlaying = $state(false);
  /** Weeks, with their parts while it plays */
  time = $state(defaultWeek.week);

  /** All but the week looked at, as text: the weeks need not be computed again while time goes by. */
  readonly #key = $derived(JSON.stringify({ ...this.setting, week: 0 }));
  readonly run = $derived(runOf(JSON.parse(this.#key) as WeekSetting));
  readonly moment = $derived(momentAt(this.run, this.time));

  readonly #loop = createFrameLoop((seconds) => this.#frame(seconds));

  readonly #pace: number;

  /** @param pace weeks that go by in a second */
  constructor(initial: Partial<WeekSetting> = {}, pace = WEEKS_A_SECOND) {
    this.#pace = pace;
    this.setting = { ...defaultWeek, ...initial };
    this.time = this.setting.week;
  }

  change(change: Partial<WeekSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = '';
    if (change.week !== undefined) {
      this.pause();
      this.time = change.week;
    }
  }

  changeNumber(field: WeekNumber, value: number): void {
    this.change({ [field]: nearestAllowed(value, ranges[field]) });
  }

  /**
   * Goes on from the moment looked at, or from the start where that is the end; at once for who wants no motion. Tells
   * whether time is going by now.
   */
  play(): boolean {
    if (this.time >= WEEKS) this.time = 0;
    if (wantsStillness()) {
      this.#stopAt(WEEKS);
      return false;
    }
    this.isPlaying = true;
    this.#loop.wake();
    return true;
  }

  pause(): void {
    if (this.isPlaying) this.#stopAt(Math.round(this.time));
  }

  sleep(): void {
    this.pause();
  }

  #stopAt(week: number): void {
    this.#loop.sleep();
    this.isPlaying = false;
    this.time = week;
    this.setting = { ...this.setting, week };
  }

  #frame(seconds: number): boolean {
    this.time = Math.min(WEEKS, this.time + seconds * this.#pace);
    if (this.time < WEEKS) return this.isPlaying;
    this.#stopAt(WEEKS);
    return false;
  }
}
