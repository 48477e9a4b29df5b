import type { Range } from '../shared/range.ts';
import { writeQuantity, type Quantity } from './quantity.ts';

/** An answer to choose in a prediction; `value` where it stands for a number. */
export interface PredictionOption {
  readonly id: string;
  readonly text: string;
  readonly value?: number;
}

/** Two computed numbers this close, relative to the larger, are the same answer. */
const SAME = 1e-6;

/**
 * The option a computed answer picks.
 *
 * @param computed id of an option, or a number that exactly one option has for its value
 * @throws Error where no option, or more than one, is the computed answer: then the question is wrong
 */
export function keyOf(
  options: readonly Pick<PredictionOption, 'id' | 'value'>[],
  computed: string | number,
): string {
  const isKey = ({ id, value }: Pick<PredictionOption, 'id' | 'value'>): boolean =>
    typeof computed === 'string'
      ? id === computed
      : value !== undefined &&
        Math.abs(value - computed) <= SAME * Math.max(Math.abs(value), Math.abs(computed));
  const [key, second] = options.filter(isKey);
  if (key === undefined) {
    const known = options.map(({ id, value }) => (value === undefined ? id : `${id} = ${value}`));
    throw new Error(`no option is the computed answer ${computed}; options: ${known.join(', ')}`);
  }
  if (second !== undefined) throw new Error(`${key.id} and ${second.id} are the same answer`);
  return key.id;
}

/** What came of a prediction, as a heading and a sentence. */
export interface Comparison {
  readonly isRight: boolean;
  readonly verdict: string;
  readonly sentence: string;
}

/** A predicted option beside the computed one. */
export function compareOptions(
  options: readonly PredictionOption[],
  given: string,
  key: string,
): Comparison {
  const textOf = (id: string): string =>
    (options.find((option) => option.id === id)?.text ?? id).replace(/\.$/, '');
  return given === key
    ? {
        isRight: true,
        verdict: 'As you predicted',
        sentence: `You predicted “${textOf(given)}”, and so it comes out.`,
      }
    : {
        isRight: false,
        verdict: 'Not as you predicted',
        sentence: `You predicted “${textOf(given)}”. It comes out as “${textOf(key)}”.`,
      };
}

/**
 * A predicted number beside the computed one.
 *
 * @param tolerance largest difference that counts as right, in the answer's unit, 0 and up
 */
export function compareNumbers(given: number, answer: Quantity, tolerance: number): Comparison {
  const write = (value: number): string => writeQuantity({ ...answer, value });
  const both = `You predicted ${write(given)}; the computed answer is ${write(answer.value)}`;
  const difference = given - answer.value;
  if (Math.abs(difference) <= tolerance) {
    return { isRight: true, verdict: 'Close', sentence: `${both}: within ${write(tolerance)}.` };
  }
  const side = difference > 0 ? 'too high' : 'too low';
  return {
    isRight: false,
    verdict: difference > 0 ? 'Too high' : 'Too low',
    sentence: `${both}: ${write(Math.abs(difference))} ${side}.`,
  };
}

/** What is asked: options to choose from or a range of numbers, with the computed answer. */
export interface PredictionQuestion {
  readonly options?: readonly PredictionOption[] | undefined;
  readonly range?: Range | undefined;
  readonly computed: number | string;
  readonly tolerance?: number | undefined;
}

/** What came of a prediction; undefined where none was made. */
export function comparePrediction(
  { options, range, computed, tolerance }: PredictionQuestion,
  given: string | number | undefined,
): Comparison | undefined {
  if (options && typeof given === 'string') {
    return compareOptions(options, given, keyOf(options, computed));
  }
  if (range && typeof given === 'number' && typeof computed === 'number') {
    return compareNumbers(given, { ...range, value: computed }, tolerance ?? range.step);
  }
  return undefined;
}

/** A prediction as the visitor made it, to be read. */
export function givenText(
  { options, range }: PredictionQuestion,
  given: string | number | undefined,
): string {
  if (range && typeof given === 'number') return writeQuantity({ ...range, value: given });
  return options?.find(({ id }) => id === given)?.text ?? 'nothing';
}

/** Whether a stored prediction still fits what is asked: a lesson may have changed since. */
export function fits(
  { options, range }: PredictionQuestion,
  given: string | number | null,
): boolean {
  if (given === null) return true;
  if (options) return options.some(({ id }) => id === given);
  return (
    range !== undefined && typeof given === 'number' && given >= range.min && given <= range.max
  );
}

/**
 * Checks a prediction as a lesson states it.
 *
 * @throws Error saying what is wrong: neither options nor a range, not three options, an answer outside the range
 */
export function checkPrediction({ options, range, computed }: PredictionQuestion): void {
  if (options) {
    if (range) throw new Error('it has both options and a range; give one');
    if (options.length !== 3) throw new Error(`it has ${options.length} options; give three`);
    keyOf(options, computed);
    return;
  }
  if (!range) throw new Error('it has neither options nor a range');
  if (typeof computed !== 'number' || !(computed >= range.min && computed <= range.max)) {
    throw new Error(`the computed answer ${computed} is not in ${range.min} to ${range.max}`);
  }
}
