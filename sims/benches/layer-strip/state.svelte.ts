import { nearestAllowed } from '../../shared/range.ts';
import type { Preset } from './presets.ts';
import { defaultStrip, ranges, type StripNumber, type StripSetting } from './settings.ts';
import { stripOf } from './strip.ts';

/** Layer Strip: what the visitor set, and what follows from it. One for each figure on a page. */
export class LayerStrip {
  setting = $state.raw<StripSetting>(defaultStrip);
  /** One sentence about what was not taken as asked, or ''. */
  message = $state('');
  readonly strip = $derived(stripOf(this.setting));

  constructor(initial: Partial<StripSetting> = {}) {
    this.setting = { ...defaultStrip, ...initial };
  }

  change(change: Partial<StripSetting>): void {
    this.setting = { ...this.setting, ...change };
    this.message = '';
  }

  changeNumber(field: StripNumber, value: number): void {
    this.change({ [field]: nearestAllowed(value, ranges[field]) });
  }

  /** The lower layer on top: what was pulled at one end is pulled at the other. */
  turnOver(): void {
    const { upper, lower, upperThickness, lowerThickness } = this.setting;
    this.change({
      upper: lower,
      lower: upper,
      upperThickness: lowerThickness,
      lowerThickness: upperThickness,
    });
  }

  start({ setting }: Preset): void {
    this.change(setting);
  }
}
