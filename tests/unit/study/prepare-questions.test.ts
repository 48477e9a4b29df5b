import { describe, expect, test } from 'vitest';
import { prepareQuestion, type Answers } from '../../../sims/study/prepare-questions.ts';
import type { ChoiceSource, NumberSource, SetSource } from '../../../sims/study/question-file.ts';
import { quantity } from '../../../sims/study/quantity.ts';

const answers: Answers = {
  forces: () => ({
    key: 'middle',
    values: {
      least: quantity(9, 0, 'N'),
      most: quantity(100, 0, 'N'),
      half: quantity(50, 0, 'N'),
    },
  }),
  bare: () => ({ values: { ratio: quantity(0.58, 2) } }),
  none: () => ({ key: undefined, values: {} }),
  layOut: () => ({ values: { lift: quantity(115, 0, 'µm') }, task: { pegs: 3 } }),
};

const choice: ChoiceSource = {
  id: 'push',
  objective: 'o1',
  kind: 'choice',
  ask: 'Press {most}. Push?',
  invented: false,
  sources: [],
  compute: 'forces',
  key: 'middle',
  options: [
    { id: 'big', text: '{most}', reason: 'Not {most}.' },
    { id: 'middle', text: '{half}', reason: 'It is {half}.' },
    { id: 'small', text: '{least}', reason: 'Not {least}.' },
  ],
};
const number: NumberSource = {
  id: 'work',
  objective: 'o1',
  kind: 'number',
  ask: 'How much?',
  invented: false,
  sources: [],
  compute: 'forces',
  answer: 'half',
  tolerance: 2,
  reason: 'It is {half}.',
  slips: [{ value: 'most', reason: 'Twice {half}.' }],
};

describe('a choice', () => {
  test('has its values written in and its numbers in rising order', () => {
    const prepared = prepareQuestion(choice, answers);
    expect(prepared.ask).toBe('Press 100\u00a0N. Push?');
    expect(prepared).toMatchObject({ key: 'middle', isNumeric: true });
    expect(prepared.kind === 'choice' && prepared.options.map(({ text }) => text)).toEqual([
      '9\u00a0N',
      '50\u00a0N',
      '100\u00a0N',
    ]);
  });

  test('in words keeps the order it was written in', () => {
    const worded = {
      ...choice,
      options: choice.options.map((option) => ({ ...option, text: `About ${option.text}` })),
    };
    const prepared = prepareQuestion(worded, answers);
    expect(prepared.kind === 'choice' && prepared.options.map(({ id }) => id)).toEqual([
      'big',
      'middle',
      'small',
    ]);
  });

  test('whose key is not the one computed is refused', () => {
    expect(() => prepareQuestion({ ...choice, key: 'big' }, answers)).toThrow(
      'Question push: the key is big, but forces finds middle.',
    );
  });

  test('for which the computation finds no option right is refused', () => {
    const worded = choice.options.map(({ id }) => ({ id, text: id, reason: 'Why.' }));
    const lost = { ...choice, ask: 'Which?', compute: 'none', options: worded };
    expect(() => prepareQuestion(lost, answers)).toThrow('but none finds none');
  });

  test('may take values from a function that judges no option', () => {
    const worded = choice.options.map(({ id }) => ({ id, text: id, reason: '{ratio}' }));
    const question = { ...choice, ask: 'Which?', compute: 'bare', options: worded };
    expect(prepareQuestion(question, answers)).toMatchObject({ key: 'middle' });
  });
});

describe('a number', () => {
  test('has its answer and its slips computed', () => {
    expect(prepareQuestion(number, answers)).toMatchObject({
      answer: { value: 50, unit: 'N' },
      reason: 'It is 50\u00a0N.',
      slips: [{ value: { value: 100 }, reason: 'Twice 50\u00a0N.' }],
    });
  });

  test('with a slip that would count as right is refused', () => {
    expect(() => prepareQuestion({ ...number, tolerance: 30 }, answers)).toThrow('too near');
  });
});

test.each([
  ['a function', { ...choice, compute: 'guess' }, 'there is no function guess; known: forces'],
  ['a value', { ...choice, ask: '{weight}?' }, 'nothing computes {weight}; known: least'],
  ['an option', { ...choice, key: 'other' }, 'no option has the key’s id, other'],
  ['an answer', { ...number, answer: 'weight' }, 'nothing computes {weight}'],
])('%s that does not exist is refused, with its name', (_, question, message) => {
  expect(() => prepareQuestion(question, answers)).toThrow(message);
});

describe('a bench to set', () => {
  const set: SetSource = {
    id: 'lay-out',
    objective: 'o1',
    kind: 'set',
    bench: 'peg-board',
    ask: 'At most {lift}.',
    invented: false,
    sources: [],
    compute: 'layOut',
    reason: 'Under {lift}.',
    outcomes: [{ id: 'one-line', reason: 'Over {lift}.' }],
  };

  test('has its task, and its values written in', () => {
    expect(prepareQuestion(set, answers)).toMatchObject({
      kind: 'set',
      bench: 'peg-board',
      task: { pegs: 3 },
      ask: 'At most 115\u00a0µm.',
      reason: 'Under 115\u00a0µm.',
      outcomes: [{ id: 'one-line', reason: 'Over 115\u00a0µm.' }],
    });
  });

  test('whose function gives no task is refused', () => {
    expect(() => prepareQuestion({ ...set, ask: 'Lay out.', compute: 'bare' }, answers)).toThrow(
      'Question lay-out: bare gives no task for peg-board.',
    );
  });
});
