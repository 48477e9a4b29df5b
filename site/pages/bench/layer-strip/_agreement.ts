import { presets } from '../../../../sims/benches/layer-strip/presets.ts';
import { elastic, shearAt, stripOf } from '../../../../sims/benches/layer-strip/strip.ts';
import { WIDTH, shearGive } from '../../../../sims/benches/layer-strip/strip.ts';
import type { StripSetting } from '../../../../sims/benches/layer-strip/settings.ts';

const CELLS = 4000;

/** The same joint by finite differences: the pull in the upper layer obeys T″ = ω²T − PG/tE₂t₂. */
function byDifferences(setting: StripSetting): readonly number[] {
  const { upper, lower, upperThickness, lowerThickness, length, pull } = setting;
  const stiff = 1 / shearGive(setting);
  const one = 1 / (elastic(upper).youngsModulus * upperThickness);
  const two = 1 / (elastic(lower).youngsModulus * lowerThickness);
  const step = length / CELLS;
  const diagonal = -2 - step ** 2 * stiff * (one + two);
  const right = -(step ** 2) * stiff * two * pull;
  const factor: number[] = [0];
  const value: number[] = [pull];
  for (let i = 1; i < CELLS; i++) {
    const pivot = diagonal - (factor[i - 1] ?? 0);
    factor.push(1 / pivot);
    value.push((right - (value[i - 1] ?? 0)) / pivot);
  }
  const force: number[] = [];
  force[CELLS] = 0;
  for (let i = CELLS - 1; i > 0; i--) {
    force[i] = (value[i] ?? 0) - (factor[i] ?? 0) * (force[i + 1] ?? 0);
  }
  force[0] = pull;
  return force.slice(1).map((at, i) => ((force[i] ?? 0) - at) / (step * WIDTH));
}

const differences = presets.map(({ setting }) => {
  const { shear, peakShear } = stripOf(setting);
  const step = setting.length / CELLS;
  return Math.max(
    ...byDifferences(setting).map(
      (stress, i) => Math.abs(stress - shearAt(shear, (i + 0.5) * step)) / peakShear,
    ),
  );
});

/** How many strips were compared with finite differences when the page was built, and how far apart at most. */
export const compared = differences.length;
export const largestDifference = Math.max(...differences);
