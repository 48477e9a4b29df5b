import { readFileSync, readdirSync, existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { lessonQuestions } from '../../../sims/study/lesson-questions.ts';
import type { Answers, Question } from '../../../sims/study/prepare-questions.ts';
import { isRightAnswer } from '../../../sims/study/judge.ts';

const folder = new URL('../../../lessons/', import.meta.url);
const lessons = readdirSync(folder).filter((name) =>
  existsSync(new URL(`${name}/questions.yaml`, folder)),
);

interface Objective {
  readonly id: string;
}

/** Ids of the objectives in the lesson's own front matter. */
function objectivesOf(lesson: string): readonly string[] {
  const text = readFileSync(new URL(`${lesson}/study.mdx`, folder), 'utf8');
  const [, matter = ''] = text.split(/^---$/m);
  return (parse(matter) as { objectives: readonly Objective[] }).objectives.map(({ id }) => id);
}

async function questionsOf(lesson: string): Promise<readonly Question[]> {
  const data: unknown = parse(readFileSync(new URL(`${lesson}/questions.yaml`, folder), 'utf8'));
  const { answers } = (await import(new URL(`${lesson}/answers.ts`, folder).href)) as {
    answers: Answers;
  };
  return lessonQuestions(lesson, data, answers, objectivesOf(lesson));
}

test('there are lessons with questions', () => {
  expect(lessons).toEqual(expect.arrayContaining(['01-ball-and-cup', '02-ball-path']));
});

describe.each(lessons)('%s', (lesson) => {
  test('its questions keep every rule of item writing', async () => {
    expect((await questionsOf(lesson)).length).toBeGreaterThanOrEqual(4);
  });

  test('every objective has a question', async () => {
    const asked = new Set((await questionsOf(lesson)).map(({ objective }) => objective));
    expect([...asked].toSorted()).toEqual(objectivesOf(lesson).toSorted());
  });

  test('no placeholder is left in what is read', async () => {
    expect(JSON.stringify(await questionsOf(lesson))).not.toMatch(/\{[a-zA-Z]+\}/);
  });

  test('the answer as it is written counts as right, and no slip does', async () => {
    for (const question of await questionsOf(lesson)) {
      if (question.kind !== 'number') continue;
      const { answer, slips } = question;
      expect(isRightAnswer(question, Number(answer.value.toFixed(answer.digits)))).toBe(true);
      for (const { value } of slips) expect(isRightAnswer(question, value.value)).toBe(false);
    }
  });
});
