import { describe, expect, test } from 'vitest';
import { bentBack } from '../../../sims/mechanics/plank-on-bed.ts';

describe('a plank that bends', () => {
  const long = { length: 400, width: 20, thickness: 10, modulus: 1000, bed: 20 };
  const decay = (({ width, thickness, modulus, bed }) =>
    ((bed * width) / (4 * modulus * ((width * thickness ** 3) / 12))) ** 0.25)(long);

  test('closed form: far from its ends a long beam sinks by Pλ / 2k under the load', () => {
    const middle = bentBack(long, 100, 0).find(({ at }) => Math.abs(at) < 1e-9);
    const expected = (100 * decay) / (2 * long.bed * long.width);
    expect(Math.abs(-(middle?.rise ?? 0) / expected - 1)).toBeLessThan(0.01);
  });

  test('closed form: at its end it sinks four times as far', () => {
    const end = bentBack(long, 100, 200).at(-1);
    const expected = (2 * 100 * decay) / (long.bed * long.width);
    expect(Math.abs(-(end?.rise ?? 0) / expected - 1)).toBeLessThan(0.01);
  });

  test('a load off the plank is refused', () => {
    expect(() => bentBack(long, 100, 201)).toThrow(/at is 201; allowed: -200 to 200 mm/u);
  });
});
