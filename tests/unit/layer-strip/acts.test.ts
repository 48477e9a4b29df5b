import { describe, expect, test } from 'vitest';
import { stripActs } from '../../../lessons/09-layers-and-bone/acts.ts';
import {
  cementOnBone,
  onMetal,
  pairs,
  shearByLength,
  shorter,
  thinner,
  transfer,
} from '../../../lessons/09-layers-and-bone/stage-layers.ts';
import { cellsOf, endsOf, stripColumns } from '../../../sims/benches/layer-strip/acts.ts';
import { shearAt, shearGive, stripOf } from '../../../sims/benches/layer-strip/strip.ts';
import { materials } from '../../../sims/mechanics/index.ts';

const [metal, twins, thin, short, bone] = stripActs.map(({ strip }) => strip);
if (!metal || !twins || !thin || !short || !bone) throw new Error('an act is missing');

describe('the strips of the lecture', () => {
  test.each(stripActs)('$text: its numbers are those of the bench', ({ setting, strip }) => {
    expect(strip).toEqual(stripOf(setting));
    const [left, right] = endsOf(strip);
    expect(Math.max(left, right)).toBeCloseTo(strip.peakShear, 9);
    expect(cellsOf(strip)).toHaveLength(stripColumns.length);
    expect(Number(cellsOf(strip)[2])).toBeCloseTo(strip.peakShear / strip.shear.mean, 1);
  });

  test('C is the answer of the vote: one end, where the plastic is pulled', () => {
    const [left, right] = endsOf(metal);
    const middle = shearAt(metal.shear, onMetal.length / 2);
    expect(onMetal.upper).toBe('polyethylene');
    expect(left).toBeGreaterThan(5 * metal.shear.mean);
    expect(right).toBeLessThan(metal.shear.mean);
    expect(middle).toBeLessThan(metal.shear.mean);
  });

  test('each says what its press is there to show', () => {
    const [left, right] = endsOf(twins);
    expect(left).toBeCloseTo(right, 9);
    expect(left).toBeGreaterThan(3 * twins.shear.mean);
    expect(metal.shear.peakToMean).toBeGreaterThan(1.5 * twins.shear.peakToMean);
    expect(thinner.upperThickness).toBe(onMetal.upperThickness / 2);
    expect(thin.peakShear / metal.peakShear).toBeCloseTo(2, 1);
    expect(short.shear.mean).toBeCloseTo(2 * metal.shear.mean, 9);
    expect(short.peakShear / metal.peakShear).toBeCloseTo(1, 2);
    const [cementEnd, boneEnd] = endsOf(bone);
    expect(cementOnBone.lower).toBe('cancellous bone');
    expect(boneEnd).toBeGreaterThan(cementEnd);
    expect(new Set(stripActs.map(({ setting }) => setting.pull)).size).toBe(1);
  });
});

describe('what the slides after it draw', () => {
  test('within ℓ the shear falls to a third', () => {
    expect(shearAt(metal.shear, transfer) / metal.peakShear).toBeCloseTo(Math.exp(-1), 1);
    const soft = materials[onMetal.upper].youngsModulus.value * onMetal.upperThickness;
    expect(Math.sqrt(shearGive(onMetal) * soft) / transfer).toBeCloseTo(1, 2);
    expect(transfer / onMetal.upperThickness).toBeCloseTo(1, 1);
  });

  test('the mean halves with twice the length, and the peak stays', () => {
    const [half, whole] = [shearByLength(shorter.length), shearByLength(onMetal.length)];
    expect(half.mean / whole.mean).toBeCloseTo(2, 9);
    expect(half.peak / whole.peak).toBeCloseTo(1, 2);
    expect(shearByLength(5).peak).toBeGreaterThan(whole.peak);
  });

  test('plastic on cement is the nearest pair, and both pairs with metal stand almost at one', () => {
    expect(pairs[0]?.name).toBe('plastic, cement');
    expect(pairs.map(({ apart }) => apart)).toEqual(
      pairs.map(({ apart }) => apart).toSorted((a, b) => a - b),
    );
    for (const { name, apart } of pairs) expect(apart > 0.95, name).toBe(name.includes('metal'));
  });
});
