import { describe, expect, test } from 'vitest';
import { describe as inWords } from '../../../sims/benches/peg-board/describe.ts';
import { presets } from '../../../sims/benches/peg-board/presets.ts';
import {
  answersRose,
  roseInPieces,
  roseOf,
  type RoseQuestion,
  type RoseRow,
} from '../../../sims/benches/peg-board/rose.ts';
import { BED_ELEMENTS, FEWER_ELEMENTS } from '../../../sims/benches/peg-board/seat.ts';
import { defaultBoard } from '../../../sims/benches/peg-board/settings.ts';
import { PegBoard } from '../../../sims/benches/peg-board/state.svelte.ts';
import type { Solver } from '../../../sims/shared/late-answer.svelte.ts';

const { design, ground, load } = defaultBoard;
const { press, shear, share } = load;
const question: RoseQuestion = { design, ground, press, shear, share, count: FEWER_ELEMENTS };

test.each(presets)('of $id, worked out in pieces, is the same as at once', ({ design: of }) => {
  const pieces = roseInPieces({ ...question, design: of });
  let piece = pieces.next();
  let count = 0;
  for (; piece.done !== true; piece = pieces.next()) count++;
  expect(count).toBe(24);
  expect(piece.value).toEqual(roseOf({ ...question, design: of }));
});

test('answers its own question and a rougher one, and none of another setting', () => {
  const fine = { ...question, count: BED_ELEMENTS };
  expect(answersRose(fine, question)).toBe(true);
  expect(answersRose(question, fine)).toBe(false);
  for (const other of [
    { press: press + 10 },
    { shear: 0 },
    { share: 10 },
    { ground: { ...ground } },
    { design: { ...design } },
  ])
    expect(answersRose(fine, { ...fine, ...other })).toBe(false);
});

describe('a rose from beside the page', () => {
  /** Answers when it is told to. */
  function slowly() {
    const asked: { question: RoseQuestion; answer: () => Promise<void> }[] = [];
    const solver: Solver<RoseQuestion, readonly RoseRow[]> = {
      solve: (next) =>
        new Promise((resolve) => {
          const answer = async (): Promise<void> => {
            resolve(roseOf(next));
            await new Promise((done) => setTimeout(done));
          };
          asked.push({ question: next, answer });
        }),
      stop: () => undefined,
    };
    return { solver, asked };
  }

  test('stands as it was until the answer comes, and says so', async () => {
    const bench = new PegBoard();
    const before = bench.rose;
    const { solver, asked } = slowly();
    bench.roseBeside(solver);
    bench.setLoad({ press: 1200 });
    bench.followRose();
    expect(bench.rose).toEqual(before);
    expect(bench.isRoseCurrent).toBe(false);
    expect(inWords(bench)).toContain('is being worked out');
    expect(bench.wholeRose()[0]?.liftOff).toBeGreaterThan(before[0]?.liftOff ?? NaN);
    await asked[0]?.answer();
    // Rough while it moves.
    expect(asked[0]?.question.count).toBe(FEWER_ELEMENTS);
    expect(bench.isRoseCurrent).toBe(false);
    bench.settle();
    bench.followRose();
    await asked[1]?.answer();
    expect(asked[1]?.question.count).toBe(BED_ELEMENTS);
    expect(bench.isRoseCurrent).toBe(true);
    expect(bench.rose).toEqual(bench.wholeRose());
    expect(inWords(bench)).toContain('round the rim the lift-off is least');
  });

  test('is not asked for anew when the load is carried round', () => {
    const bench = new PegBoard();
    const { solver, asked } = slowly();
    bench.roseBeside(solver);
    bench.setLoad({ bearing: 200 });
    bench.followRose();
    expect(asked).toHaveLength(0);
    expect(bench.isRoseCurrent).toBe(true);
  });

  test('is worked out at once again when nothing beside the page does it', () => {
    const bench = new PegBoard();
    const stop = bench.roseBeside(slowly().solver);
    bench.setLoad({ press: 1200 });
    bench.settle();
    stop();
    expect(bench.rose).toEqual(bench.wholeRose());
    expect(bench.isRoseCurrent).toBe(true);
  });
});
