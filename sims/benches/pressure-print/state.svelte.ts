import { nearestAllowed } from '../../shared/range.ts';
import { Lagging } from '../two-curves/lagging.svelte.ts';
import { layerRanges, type LayerSetting } from '../two-curves/layer.ts';
import { allowedRange, holdInstead, pairFrom } from '../two-curves/pair.ts';
import type { Held, PairField } from '../two-curves/pair-ranges.ts';
import { printRows, type PrintRow } from './curve.ts';
import { printOf } from './print.ts';
import { defaultPrint, pairSettingOf, translationRange, type PrintSetting } from './setting.ts';

/** Pressure Print: what the visitor set, and what follows from it. One for each figure on a page. */
export class PressurePrint {
  setting = $state.raw<PrintSetting>(defaultPrint);
  /** One sentence about the last change that was not taken as asked, or ''. */
  message = $state('');

  readonly print = $derived(printOf(this.setting));
  /** What all but the translation comes to: while that alone moves, the curves stand. */
  readonly #curveKey = $derived(
    JSON.stringify({ ...this.setting, ...this.print.layer, translation: 0 }),
  );
  readonly #curve: Lagging<string, readonly PrintRow[]>;

  constructor(initial: Partial<PrintSetting> = {}) {
    this.setting = { ...defaultPrint, ...initial };
    this.#curve = new Lagging(this.#curveKey, rowsFor);
  }

  get rows(): readonly PrintRow[] {
    return this.#curve.value;
  }

  /** Whether the curves are still those of a moment ago. */
  get isLagging(): boolean {
    return this.#curve.key !== this.#curveKey;
  }

  change(change: Partial<PrintSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = this.print.message;
    this.#curve.follow(this.#curveKey);
  }

  changePair(field: PairField, value: number): void {
    const sound = this.print.pair.setting;
    this.change({ [field]: nearestAllowed(value, allowedRange(sound, field)) });
  }

  changeLayer(field: keyof LayerSetting, value: number): void {
    this.change({ [field]: nearestAllowed(value, layerRanges[field]) });
  }

  hold(held: Held): void {
    const { setting, message } = holdInstead(pairSettingOf(this.setting), held);
    this.change({ held: setting.held, [held]: setting[held] });
    if (message !== '') this.message = message;
  }

  /** Moves the ball's centre, mm from the centre line; no further than the rim. */
  moveTo(translation: number): void {
    const { max } = translationRange(this.print.pair.socket.width);
    const held = Math.max(0, Math.min(max, Number(translation.toFixed(2))));
    this.change({ translation: held });
  }

  reset(): void {
    this.change(defaultPrint);
  }

  stop(): void {
    this.#curve.stop();
  }
}

function rowsFor(key: string): readonly PrintRow[] {
  const setting = JSON.parse(key) as PrintSetting;
  return printRows(pairFrom(pairSettingOf(setting)), setting);
}
