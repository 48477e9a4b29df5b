import { describe, expect, test } from 'vitest';
import { readQuestionFile } from '../../../sims/study/question-file.ts';

const option = (id: string) => ({ id, text: `Text of ${id}`, reason: `Reason of ${id}` });
const choice = (id: string) => ({
  id,
  objective: 'o1',
  kind: 'choice',
  ask: 'Which of these is it?',
  key: 'b',
  options: [option('a'), option('b'), option('c')],
});
const number = {
  id: 'ratio',
  objective: 'o1',
  kind: 'number',
  ask: 'How much is it?',
  compute: 'ratio',
  answer: 'ratio',
  tolerance: 0.01,
  reason: 'It is so.',
  slips: [{ value: 'sine', reason: 'This is the sine.' }],
};
const set = {
  id: 'lay-out',
  objective: 'o1',
  kind: 'set',
  bench: 'peg-board',
  ask: 'Lay it out.',
  compute: 'layOut',
  reason: 'It spans both ways.',
  outcomes: [{ id: 'one-line', reason: 'They stand on one line.' }],
};
const fileWith = (first: unknown) => ({ questions: [first, choice('two'), choice('three')] });
const problemsOf = (first: unknown) => readQuestionFile(fileWith(first)).problems;

test('a sound file is read, with what may be left out filled in', () => {
  const { questions, problems } = readQuestionFile(fileWith(number));
  expect(problems).toEqual([]);
  expect(questions?.map(({ id }) => id)).toEqual(['ratio', 'two', 'three']);
  expect(questions?.[1]).toMatchObject({ invented: false, sources: [] });
});

test('a question that has a bench set is read', () => {
  const { questions, problems } = readQuestionFile(fileWith(set));
  expect(problems).toEqual([]);
  expect(questions?.[0]).toMatchObject({ kind: 'set', bench: 'peg-board', invented: false });
});

test.each([
  ['an unknown bench', { ...set, bench: 'work-bench' }, 'bench is one of: peg-board'],
  ['no function', { ...set, compute: undefined }, 'compute is missing'],
  ['no reason', { ...set, reason: undefined }, 'reason is missing'],
  ['no outcome', { ...set, outcomes: [] }, 'there is no outcome'],
  ['an outcome without a reason', { ...set, outcomes: [{ id: 'far' }] }, 'reason: it is missing'],
])('of a bench to set, %s is told', (_, question, message) => {
  expect(problemsOf(question).join()).toContain(message);
});

describe('what is wrong is told with its place', () => {
  const base = choice('one');
  test.each([
    ['no questions', { questions: undefined }, 'questions is a list'],
    ['one question', { questions: [base] }, 'there are fewer than 3 questions'],
    ['no object', 'text', 'The file'],
  ])('%s', (_, data, message) => {
    expect(readQuestionFile(data).problems.join()).toContain(message);
  });

  test.each([
    ['two options', { ...base, options: base.options.slice(1) }, 'fewer than 3 options'],
    ['five options', { ...base, options: ['a', 'b', 'c', 'd', 'e'].map(option) }, 'more than 4'],
    ['no key', { ...base, key: undefined }, 'key: '],
    ['no objective', { ...base, objective: undefined }, 'objective is missing'],
    ['an unknown kind', { ...base, kind: 'essay' }, 'kind is choice, number or set'],
    ['a stray entry', { ...base, colour: 'red' }, 'colour: there is no such entry'],
    ['no tolerance', { ...number, id: 'one', tolerance: undefined }, 'tolerance is missing'],
    ['a tolerance of 0', { ...number, id: 'one', tolerance: 0 }, 'tolerance is not above 0'],
    ['no slip', { ...number, id: 'one', slips: [] }, 'there is no slip'],
    ['nothing computed', { ...number, id: 'one', compute: undefined }, 'compute is missing'],
  ])('%s', (_, question, message) => {
    const [problem, ...others] = problemsOf(question);
    expect(others).toEqual([]);
    expect(problem).toContain('Question 1 (one)');
    expect(problem).toContain(message);
  });

  test('an option without a reason', () => {
    const bare = { id: 'c', text: 'Text of c' };
    expect(problemsOf({ ...base, options: [option('a'), option('b'), bare] })).toEqual([
      'Question 1 (one), options, item 3, reason: it is missing.',
    ]);
  });
});
