import { describe, expect, test, vi } from 'vitest';
import { LateAnswer, type Solver } from '../../../sims/shared/late-answer.svelte.ts';

/** Answers when it is told to. */
function slowSolver() {
  const asked: { question: number; answer: () => Promise<void> }[] = [];
  const stop = vi.fn();
  const solver: Solver<number, string> = {
    solve: (question) =>
      new Promise((resolve) => {
        const answer = async (): Promise<void> => {
          resolve(`answer to ${question}`);
          await new Promise((done) => setTimeout(done));
        };
        asked.push({ question, answer });
      }),
    stop,
  };
  return { solver, asked, stop, first: { question: 0, answer: 'answer to 0' } };
}

describe('an answer that comes late', () => {
  test('stands until the next one comes, and says which question it answers', async () => {
    const { solver, asked, first } = slowSolver();
    const late = new LateAnswer(solver, first);
    late.ask(1);
    expect([late.question, late.answer]).toEqual([0, 'answer to 0']);
    await asked[0]?.answer();
    expect([late.question, late.answer]).toEqual([1, 'answer to 1']);
  });

  test('of many questions asked meanwhile only the last is worked out', async () => {
    const { solver, asked, first } = slowSolver();
    const late = new LateAnswer(solver, first);
    for (const question of [1, 2, 3, 4]) late.ask(question);
    expect(asked.map(({ question }) => question)).toEqual([1]);
    await asked[0]?.answer();
    expect(asked.map(({ question }) => question)).toEqual([1, 4]);
    await asked[1]?.answer();
    expect(late.answer).toBe('answer to 4');
  });

  test('back at the first question while another is worked out, ends with the first', async () => {
    const { solver, asked, first } = slowSolver();
    const late = new LateAnswer(solver, first);
    late.ask(1);
    late.ask(0);
    await asked[0]?.answer();
    expect(late.question).toBe(1);
    await asked[1]?.answer();
    expect([late.question, late.answer]).toEqual([0, 'answer to 0']);
  });

  test('asks nothing that is answered already', () => {
    const { solver, asked, first } = slowSolver();
    const late = new LateAnswer(solver, first, (given, question) => given >= question);
    late.ask(0);
    late.ask(-1);
    expect(asked).toHaveLength(0);
  });

  test('once stopped takes no answer and asks no more', async () => {
    const { solver, asked, stop, first } = slowSolver();
    const late = new LateAnswer(solver, first);
    late.ask(1);
    late.stop();
    expect(stop).toHaveBeenCalledOnce();
    await asked[0]?.answer();
    late.ask(2);
    expect(asked).toHaveLength(1);
    expect(late.answer).toBe('answer to 0');
  });
});
