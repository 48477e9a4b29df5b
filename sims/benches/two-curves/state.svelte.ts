import { nearestAllowed } from '../../shared/range.ts';
import type { LayerSetting } from './layer.ts';
import { layerRanges } from './layer.ts';
import { Lagging } from './lagging.svelte.ts';
import { allowedRange, changeInstead, holdInstead, pairFrom } from './pair.ts';
import type { Change, Held, PairField } from './pair-ranges.ts';
import {
  countingOnly,
  defaultTwoCurves,
  type CurveSetting,
  type TwoCurvesSetting,
} from './setting.ts';
import { pressureRow, pressureRows, shapeRow, shapeRows } from './sweep.ts';

/** Two Curves: what the visitor set, and what follows from it. One for each figure on a page. */
export class TwoCurves {
  setting = $state.raw<TwoCurvesSetting>(defaultTwoCurves);
  /** One sentence about the last change that was not taken as asked, or ''. */
  message = $state('');

  readonly pair = $derived(pairFrom(this.setting));
  readonly layer = $derived<LayerSetting>(this.setting);
  readonly shape = $derived(shapeRow(this.pair));
  readonly pressure = $derived(pressureRow(this.pair, this.setting));
  /** What all but the mismatch comes to: while that alone moves, the curves stand. */
  readonly #sweepKey = $derived(sweepKey({ ...this.setting, ...this.pair.setting }));
  readonly shapeCurve = $derived(shapeRows(JSON.parse(this.#sweepKey) as CurveSetting));
  readonly #pressureCurve: Lagging<string, ReturnType<typeof pressureRows>>;

  readonly kept = $derived.by(() => {
    const { kept } = this.setting;
    if (kept === null) return null;
    const pair = pairFrom(kept);
    const sound = { ...kept, ...pair.setting };
    return {
      pair,
      shape: shapeRow(pair),
      shapes: shapeRows(sound),
      pressures: pressureRows(sound),
    };
  });

  constructor(initial: Partial<TwoCurvesSetting> = {}) {
    this.setting = { ...defaultTwoCurves, ...initial };
    this.#pressureCurve = new Lagging(this.#sweepKey, (key) =>
      pressureRows(JSON.parse(key) as CurveSetting),
    );
  }

  get pressureCurve(): ReturnType<typeof pressureRows> {
    return this.#pressureCurve.value;
  }

  /** Whether the pressure curve is still the one of a moment ago. */
  get isLagging(): boolean {
    return this.#pressureCurve.key !== this.#sweepKey;
  }

  change(change: Partial<TwoCurvesSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = this.pair.message;
    this.#pressureCurve.follow(this.#sweepKey);
  }

  changePair(field: PairField, value: number): void {
    const sound = this.pair.setting;
    this.change({ ...sound, [field]: nearestAllowed(value, allowedRange(sound, field)) });
  }

  changeLayer(field: keyof LayerSetting, value: number): void {
    this.change({ [field]: nearestAllowed(value, layerRanges[field]) });
  }

  hold(held: Held): void {
    const { setting, message } = holdInstead(this.setting, held);
    this.change(setting);
    if (message !== '') this.message = message;
  }

  changeCurve(change: Change): void {
    this.change(changeInstead(this.setting, change));
  }

  keep(): void {
    this.change({ kept: countingOnly({ ...this.setting, ...this.pair.setting }) });
  }

  drop(): void {
    this.change({ kept: null });
  }

  reset(): void {
    this.change(defaultTwoCurves);
  }

  stop(): void {
    this.#pressureCurve.stop();
  }
}

/** The sound setting without mismatch and kept curves, as text: equal texts, equal curves. */
function sweepKey(setting: TwoCurvesSetting): string {
  return JSON.stringify({ ...countingOnly(setting), mismatch: 0 });
}
