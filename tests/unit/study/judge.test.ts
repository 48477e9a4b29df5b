import { expect, test } from 'vitest';
import {
  isRightAnswer,
  isUsableAnswer,
  layoutVerdict,
  slipOf,
  verdictOf,
} from '../../../sims/study/judge.ts';
import type { ChoiceQuestion, NumberQuestion } from '../../../sims/study/prepare-questions.ts';
import { quantity } from '../../../sims/study/quantity.ts';

const shared = { id: 'q', objective: 'o1', ask: 'What?', isInvented: false, sources: [] };
const choice: ChoiceQuestion = {
  ...shared,
  kind: 'choice',
  key: 'b',
  isNumeric: false,
  options: ['a', 'b', 'c'].map((id) => ({ id, text: id, reason: id })),
};
const number: NumberQuestion = {
  ...shared,
  kind: 'number',
  answer: quantity(0.7002, 2),
  tolerance: 0.01,
  reason: 'So.',
  slips: [{ value: quantity(0.5736, 2), reason: 'The sine.' }],
};

test('a choice is right when it is the key', () => {
  expect(isRightAnswer(choice, 'b')).toBe(true);
  expect(isRightAnswer(choice, 'a')).toBe(false);
});

test.each([
  [0.7, true],
  [0.71, true],
  [0.6902, true],
  [0.69, false],
  [0.72, false],
])('%d is right within the tolerance: %s', (given, isRight) => {
  expect(isRightAnswer(number, given)).toBe(isRight);
});

test('an answer on the very edge of the tolerance counts, whatever its rounding', () => {
  const edge = { ...number, answer: quantity(0.3, 1), tolerance: 0.1 };
  expect(isRightAnswer(edge, 0.2)).toBe(true);
  expect(isRightAnswer(edge, 0.4)).toBe(true);
});

test('a known slip is recognised', () => {
  expect(slipOf(number, 0.57)?.reason).toBe('The sine.');
  expect(slipOf(number, 0.9)).toBeUndefined();
});

test('a stored answer that the question no longer has is not used', () => {
  expect(isUsableAnswer(choice, 'c')).toBe(true);
  expect(isUsableAnswer(choice, 'z')).toBe(false);
  expect(isUsableAnswer(number, 0.5)).toBe(true);
  expect(isUsableAnswer(number, 'b')).toBe(false);
});

test('the verdict says in words what came of it, and at which try', () => {
  expect(verdictOf(choice, { given: 'b', isRight: true, tries: 1 }, false)).toMatchObject({
    mark: 'right',
    words: 'Right',
  });
  expect(verdictOf(choice, { given: 'b', isRight: true, tries: 3 }, false).words).toBe(
    'Right, at try 3',
  );
  expect(verdictOf(choice, { given: 'a', isRight: false, tries: 1 }, false)).toMatchObject({
    mark: 'wrong',
    words: 'Not this one',
  });
  expect(verdictOf(number, { given: 0.57, isRight: false, tries: 1 }, false)).toEqual({
    mark: 'wrong',
    words: 'Not right: too low',
    sentence: 'You answered 0.57.',
  });
  expect(verdictOf(number, { given: 0.7, isRight: true, tries: 1 }, false).sentence).toBe(
    'You answered 0.7. Within 0.01 counts as right.',
  );
});

test('of a layout it tells how much is met, and at which try all of it', () => {
  const requirement = (id: string, isMet: boolean) => ({ id, asks: 'So', found: 'so', isMet });
  const requirements = [requirement('a', true), requirement('b', false)];
  expect(layoutVerdict({ isMet: false, requirements, outcomes: ['far'] }, 1)).toMatchObject({
    mark: 'wrong',
    words: '1 of 2 met',
  });
  const met = { isMet: true, requirements: [requirement('a', true)], outcomes: [] };
  expect(layoutVerdict(met, 1).words).toBe('Everything is met');
  expect(layoutVerdict(met, 3).words).toBe('Everything is met, at try 3');
});
