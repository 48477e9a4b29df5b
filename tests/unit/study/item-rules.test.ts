import { describe, expect, test } from 'vitest';
import { questionProblems, setProblems } from '../../../sims/study/item-rules.ts';
import { lessonQuestions } from '../../../sims/study/lesson-questions.ts';
import type { ChoiceQuestion } from '../../../sims/study/prepare-questions.ts';
import type { ChoiceSource, SetSource } from '../../../sims/study/question-file.ts';

const option = (id: string, text = `Text of ${id}`) => ({ id, text, reason: 'A reason.' });
const source: ChoiceSource = {
  id: 'push',
  objective: 'o1',
  kind: 'choice',
  ask: 'Which of these is it?',
  invented: false,
  sources: [],
  key: 'b',
  options: [option('a'), option('b'), option('c')],
};
const withOption = (text: string): ChoiceSource => ({
  ...source,
  options: [option('a'), option('b'), option('c', text)],
});

describe('one question', () => {
  test('that keeps the rules has no problem', () => {
    expect(questionProblems(source, ['o1', 'o2'])).toEqual([]);
  });

  test.each([
    ['all of the above', withOption('All of the above')],
    ['none of the above', withOption('None of the above')],
    ['none of these', withOption('None of these')],
    ['both a and b', withOption('Both A and B')],
    ['except', { ...source, ask: 'All of it holds, except which?' }],
    ['NOT', { ...source, ask: 'Which is NOT so?' }],
  ])('with “%s” is refused', (words, question) => {
    const [problem] = questionProblems(question, ['o1']);
    expect(problem?.toLowerCase()).toContain(words.toLowerCase());
  });

  test.each([
    ['ask', { ...source, ask: 'At 50 N, which?' }],
    ['an option', withOption('Some 3.5 mm')],
  ])('with a number typed in %s is refused', (_, question) => {
    expect(questionProblems(question, ['o1']).join()).toMatch(/the number (50|3\.5) is typed/);
  });

  test('with a computed number is not', () => {
    expect(questionProblems({ ...source, ask: 'At {press1}, which?' }, ['o1'])).toEqual([]);
  });

  const set: SetSource = {
    ...{ id: 'lay', objective: 'o1', kind: 'set', bench: 'peg-board', ask: 'Lay it out.' },
    ...{ invented: false, sources: [], compute: 'layOut', reason: 'It spans {width}.' },
    outcomes: [{ id: 'near', reason: 'Too near.' }],
  };

  test.each([
    ['its reason', { ...set, reason: 'It spans 16 mm.' }],
    ['an outcome', { ...set, outcomes: [{ id: 'near', reason: 'Within 16 mm.' }] }],
  ])('that has a bench set keeps the rules in %s too', (_, question) => {
    expect(questionProblems(set, ['o1'])).toEqual([]);
    expect(questionProblems(question, ['o1']).join()).toContain('the number 16 is typed');
  });

  test('that has a bench set has each outcome once', () => {
    const [outcome] = set.outcomes;
    const twice = { ...set, outcomes: outcome === undefined ? [] : [outcome, outcome] };
    expect(questionProblems(twice, ['o1'])).toEqual([
      'Question lay: two outcomes have the same id.',
    ]);
  });

  test('for an objective the lesson does not have is refused', () => {
    expect(questionProblems(source, ['o2', 'o3'])).toEqual([
      'Question push: there is no objective o1; the lesson has o2, o3.',
    ]);
  });

  test('with one id for two options is refused', () => {
    const question = { ...source, options: [option('a'), option('b'), option('b')] };
    expect(questionProblems(question, ['o1'])).toEqual([
      'Question push: two options have the same id.',
    ]);
  });
});

describe('questions together', () => {
  const prepared = (id: string, key: string, isKeyLong = false): ChoiceQuestion => ({
    kind: 'choice',
    id,
    objective: 'o1',
    ask: 'Which?',
    isInvented: false,
    sources: [],
    key,
    isNumeric: false,
    options: ['a', 'b', 'c'].map((name) =>
      option(name, name === key && isKeyLong ? `Much longer text of ${name}` : `Text of ${name}`),
    ),
  });

  test('whose right options stand in different places are accepted', () => {
    expect(setProblems([prepared('x', 'a'), prepared('y', 'b'), prepared('z', 'c')])).toEqual([]);
  });

  test('whose right option stands mostly in one place are refused', () => {
    const set = [prepared('w', 'b'), prepared('x', 'b'), prepared('y', 'b'), prepared('z', 'c')];
    expect(setProblems(set)).toEqual(['The right option is B in 3 of 4 questions.']);
  });

  test('whose right option is mostly the longest are refused', () => {
    const set = [prepared('x', 'a', true), prepared('y', 'b', true), prepared('z', 'c')];
    expect(setProblems(set)).toEqual(['The right option is the longest in 2 of 3 questions.']);
  });

  test('numbers are not judged by their length', () => {
    const set = [prepared('x', 'a', true), prepared('y', 'b', true), prepared('z', 'c')];
    expect(setProblems(set.map((question) => ({ ...question, isNumeric: true })))).toEqual([]);
  });

  test('with one id twice, or options that read the same, are refused', () => {
    const twins = {
      ...prepared('x', 'a'),
      options: [option('a', 'S'), option('b', 'S'), option('c')],
    };
    expect(setProblems([twins, prepared('x', 'b')])).toEqual([
      'Two questions have the id x.',
      'Question x: two options read the same.',
    ]);
  });
});

test('a lesson’s faulty file is refused with its name and every fault', () => {
  const questions = [
    { ...source, id: 'one', objective: 'o9' },
    { ...source, id: 'two', ask: 'Which of 3?' },
    { ...source, id: 'three', key: 'a' },
  ];
  const read = () => lessonQuestions('01-ball-and-cup', { questions }, {}, ['o1']);
  expect(read).toThrow('lessons/01-ball-and-cup/questions.yaml');
  expect(read).toThrow('Question one: there is no objective o9');
  expect(read).toThrow('Question two: the number 3 is typed');
});
