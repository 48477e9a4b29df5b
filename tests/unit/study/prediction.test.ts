import { describe, expect, test } from 'vitest';
import {
  checkPrediction,
  comparePrediction,
  fits,
  givenText,
  keyOf,
} from '../../../sims/study/prediction.ts';

const options = [
  { id: 'same', text: 'As much', value: 1 },
  { id: 'twice', text: 'Twice as much', value: 2 },
  { id: 'fourfold', text: 'Four times as much.', value: 4 },
];
const range = { min: 0, max: 100, step: 1, digits: 0, unit: 'N' };

describe('the key', () => {
  test('is the option whose value was computed, rounding aside', () => {
    expect(keyOf(options, (0.1 + 0.2) / 0.15)).toBe('twice');
    expect(keyOf(options, 'same')).toBe('same');
  });

  test('does not exist where the computed answer is no option', () => {
    expect(() => keyOf(options, 2.1)).toThrow('no option is the computed answer 2.1');
    expect(() => keyOf(options, 'thrice')).toThrow('same = 1, twice = 2');
  });

  test('may not be two options', () => {
    const twins = [...options, { id: 'double', text: 'Double', value: 2 }];
    expect(() => keyOf(twins, 2)).toThrow('twice and double are the same answer');
  });
});

describe('the comparison', () => {
  test('of a right option says so', () => {
    expect(comparePrediction({ options, computed: 2 }, 'twice')).toEqual({
      isRight: true,
      verdict: 'As you predicted',
      sentence: 'You predicted “Twice as much”, and so it comes out.',
    });
  });

  test('of a wrong option names both', () => {
    const { isRight, sentence } = comparePrediction({ options, computed: 2 }, 'fourfold') ?? {};
    expect(isRight).toBe(false);
    expect(sentence).toBe('You predicted “Four times as much”. It comes out as “Twice as much”.');
  });

  test.each([
    [34, true, 'Close', 'within 3'],
    [35, false, 'Too high', '4 N too high'],
    [27, false, 'Too low', '4 N too low'],
  ])('of %d with 31 computed: %s, %s', (given, isRight, verdict, words) => {
    const found = comparePrediction({ range, computed: 31, tolerance: 3 }, given);
    expect(found).toMatchObject({ isRight, verdict });
    expect(found?.sentence.replaceAll('\u00a0', ' ')).toContain(words);
  });

  test('without a tolerance one step of the range is close', () => {
    expect(comparePrediction({ range, computed: 31 }, 32)?.isRight).toBe(true);
    expect(comparePrediction({ range, computed: 31 }, 33)?.isRight).toBe(false);
  });

  test('without a prediction there is none', () => {
    expect(comparePrediction({ options, computed: 2 }, undefined)).toBeUndefined();
  });
});

test('a prediction is read as it was made', () => {
  expect(givenText({ options, computed: 2 }, 'same')).toBe('As much');
  expect(givenText({ range, computed: 31 }, 40)).toBe('40\u00a0N');
});

test('a stored prediction that the question no longer has is not used', () => {
  expect(fits({ options, computed: 2 }, 'twice')).toBe(true);
  expect(fits({ options, computed: 2 }, 'gone')).toBe(false);
  expect(fits({ options, computed: 2 }, 7)).toBe(false);
  expect(fits({ range, computed: 31 }, 40)).toBe(true);
  expect(fits({ range, computed: 31 }, 400)).toBe(false);
  expect(fits({ range, computed: 31 }, null)).toBe(true);
});

describe('a prediction as a lesson states it', () => {
  test('with three options and one of them computed is accepted', () => {
    expect(() => checkPrediction({ options, computed: 4 })).not.toThrow();
    expect(() => checkPrediction({ range, computed: 31 })).not.toThrow();
  });

  test.each([
    [{ computed: 2 }, 'neither options nor a range'],
    [{ options, range, computed: 2 }, 'both options and a range'],
    [{ options: options.slice(1), computed: 2 }, 'it has 2 options'],
    [{ options, computed: 3 }, 'no option is the computed answer 3'],
    [{ range, computed: 101 }, 'the computed answer 101 is not in 0 to 100'],
    [{ range, computed: NaN }, 'the computed answer NaN is not in 0 to 100'],
  ])('%o is refused', (question, message) => {
    expect(() => checkPrediction(question)).toThrow(message);
  });
});
