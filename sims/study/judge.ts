import type { Grade } from '../shared/settable.ts';
import type { Answer } from '../shared/stored-state.ts';
import type { AskedQuestion, NumberQuestion } from './prepare-questions.ts';
import { writeQuantity } from './quantity.ts';

/** Slack for the rounding of decimal numbers, so that an answer on the edge of the tolerance counts. */
const ROUNDING = 1e-9;

/** Whether an answer is right: the key, or a number within the tolerance. */
export function isRightAnswer(question: AskedQuestion, given: string | number): boolean {
  if (question.kind === 'choice') return given === question.key;
  return typeof given === 'number' && isNear(question, given, question.answer.value);
}

/** The known slip that leads to a wrong number, where there is one. */
export function slipOf(
  question: NumberQuestion,
  given: number,
): NumberQuestion['slips'][number] | undefined {
  return question.slips.find(({ value }) => isNear(question, given, value.value));
}

/** Whether a stored answer still fits the question: a lesson may have changed since. */
export function isUsableAnswer(question: AskedQuestion, given: string | number): boolean {
  if (question.kind === 'choice') return question.options.some(({ id }) => id === given);
  return typeof given === 'number';
}

/** What to tell of an answer. */
export function verdictOf(
  question: AskedQuestion,
  { given, isRight, tries }: Pick<Answer, 'given' | 'isRight' | 'tries'>,
  isKeyShown: boolean,
): { readonly mark: 'right' | 'wrong'; readonly words: string; readonly sentence: string } {
  const mark = isRight ? 'right' : 'wrong';
  const ordinal = tries > 1 ? `, at try ${tries}` : '';
  if (question.kind === 'choice') {
    const hint = isKeyShown ? 'The best answer is marked.' : 'Look at why, then try again.';
    return isRight
      ? { mark, words: `Right${ordinal}`, sentence: '' }
      : { mark, words: 'Not this one', sentence: hint };
  }
  const yours =
    typeof given === 'number' ? `You answered ${plain(given, question.answer.unit)}.` : '';
  if (isRight) {
    const within = writeQuantity({ ...question.answer, value: question.tolerance });
    return {
      mark,
      words: `Right${ordinal}`,
      sentence: `${yours} Within ${within} counts as right.`,
    };
  }
  const side = Number(given) > question.answer.value ? 'too high' : 'too low';
  return { mark, words: `Not right: ${side}`, sentence: yours };
}

/** What to tell of a layout that was checked. */
export function layoutVerdict(
  { isMet, requirements }: Grade,
  tries: number,
): { readonly mark: 'right' | 'wrong'; readonly words: string; readonly sentence: string } {
  const ordinal = tries > 1 ? `, at try ${tries}` : '';
  if (isMet) return { mark: 'right', words: `Everything is met${ordinal}`, sentence: '' };
  const count = requirements.filter((each) => each.isMet).length;
  return {
    mark: 'wrong',
    words: `${count} of ${requirements.length} met`,
    sentence: 'Look at why, then change the layout and check again.',
  };
}

function isNear({ tolerance }: NumberQuestion, given: number, value: number): boolean {
  return Math.abs(given - value) <= tolerance * (1 + ROUNDING);
}

/** A number as typed, whatever its decimals. */
function plain(value: number, unit: string): string {
  return writeQuantity({ value, digits: Math.min(6, decimalsOf(value)), unit });
}

function decimalsOf(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}
