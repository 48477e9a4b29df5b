import { readFileSync, readdirSync, existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { lessonQuestions } from '../../../sims/study/lesson-questions.ts';
import { settablePegs } from '../../../sims/benches/peg-board/question-grade.ts';
import type { PegTask } from '../../../sims/benches/peg-board/question-task.ts';
import type { Settable } from '../../../sims/shared/settable.ts';
import type { Answers, Question, SetQuestion } from '../../../sims/study/prepare-questions.ts';
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

/** What a bench that is set makes of a task: one entry a bench, its layouts as text. */
const benches: Readonly<Record<SetQuestion<unknown>['bench'], (task: unknown) => BenchTask>> = {
  'peg-board': (task) => benchTask(settablePegs, task as PegTask),
};
interface BenchTask {
  readonly outcomes: readonly string[];
  readonly gradeOfStart: boolean;
  readonly gradeOfWay: boolean;
  readonly isKept: boolean;
}
function benchTask<Task, Layout>(bench: Settable<Task, Layout>, task: Task): BenchTask {
  const [start, way] = [bench.start(task), bench.way(task)];
  const back = [start, way].map((layout) => bench.read(task, bench.write(layout)));
  return {
    outcomes: bench.outcomes,
    gradeOfStart: bench.grade(task, start).isMet,
    gradeOfWay: bench.grade(task, way).isMet,
    isKept: JSON.stringify(back) === JSON.stringify([start, way]),
  };
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

  test('a bench to set does not begin at its answer, has one, keeps both, and has a reason for every outcome', async () => {
    for (const question of await questionsOf(lesson)) {
      if (question.kind !== 'set') continue;
      const { outcomes, ...found } = benches[question.bench](question.task);
      expect(found).toEqual({ gradeOfStart: false, gradeOfWay: true, isKept: true });
      expect(question.outcomes.map(({ id }) => id).toSorted()).toEqual(outcomes.toSorted());
    }
  });
});
