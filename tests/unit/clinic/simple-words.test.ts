import { describe, expect, test } from 'vitest';
import {
  BALL_DIAMETER,
  CUP_WIDTH,
  comparedWith,
  cups,
  everySentence,
  outcomeOf,
  presses,
} from '../../../sims/benches/push-bench/simple-words.ts';
import { peakStabilityRatio, socketFromDepth } from '../../../sims/geometry/index.ts';
import { createPushScene } from '../../../sims/physics/push-scene.ts';
import { sentencesOf } from '../../../site/clinic/reading-grade.ts';

const MOST_STEPS = 6000;

/** Side force at which the simulation lets the ball go, N. */
function slipForce(depth: number, compressiveLoad: number): number {
  const socket = socketFromDepth({ depth, width: CUP_WIDTH });
  const scene = createPushScene({
    socket,
    ballRadius: BALL_DIAMETER / 2,
    compressiveLoad,
    friction: 0,
  });
  scene.startPush();
  for (let i = 0; i < MOST_STEPS && scene.read().push === 'pushing'; i += 1) scene.step();
  return (scene.read().slipRatio ?? Number.NaN) * compressiveLoad;
}

describe('what the plain bench says of what the simulation does', () => {
  const trials = cups.flatMap(({ name, depth }) =>
    presses.map(({ text, load }) => {
      const socket = socketFromDepth({ depth, width: CUP_WIDTH });
      return {
        name,
        text,
        load,
        depth,
        force: slipForce(depth, load),
        theory: load * peakStabilityRatio(socket),
      };
    }),
  );

  test.each(trials)('$name under a $text is held as the theory says', ({ force, theory }) => {
    expect(Math.abs(force - theory)).toBeLessThanOrEqual(0.03 * theory + 0.5);
  });

  test.each(trials)('$name under a $text is described by its theory too', ({ force, theory }) => {
    expect(outcomeOf(force)).toBe(outcomeOf(theory));
  });

  test('a flat dish holds nothing, however hard the press', () => {
    const flat = trials.filter(({ name }) => name === 'flat');
    expect(new Set(flat.map(({ force }) => outcomeOf(force)))).toEqual(
      new Set(['It slipped at once.']),
    );
  });

  test('a harder press and a deeper cup hold more, and the words say so', () => {
    const of = (name: string, load: number) =>
      trials.find((trial) => trial.name === name && trial.load === load)?.force ?? Number.NaN;
    expect(comparedWith(of('shallow', 25), of('shallow', 50))).toBe('That is more than last time.');
    expect(comparedWith(of('shallow', 50), of('deep', 50))).toBe('That is more than last time.');
    expect(comparedWith(of('deep', 50), of('flat', 50))).toBe('That is less than last time.');
    expect(comparedWith(of('flat', 25), of('flat', 100))).toBe(
      'That is about the same as last time.',
    );
    expect(comparedWith(of('deep', 50), of('deep', 50))).toBe(
      'That is about the same as last time.',
    );
  });

  test('the first try is compared with nothing', () => {
    expect(comparedWith(null, 20)).toBe('');
  });
});

test('words for a push never fall as the push grows', () => {
  const order = ['at once', 'light', 'firm', 'a strong', 'very strong'];
  const places = Array.from({ length: 400 }, (_, i) => outcomeOf(i / 4)).map((words) =>
    order.findIndex((word) => words.includes(word)),
  );
  expect(Math.min(...places)).toBe(0);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(new Set(places).size).toBe(order.length);
});

test('everything it can say is short, whole sentences without figures', () => {
  for (const text of everySentence) {
    expect(text).toMatch(/[.?!]$/);
    expect(text).not.toMatch(/\d/);
    for (const sentence of sentencesOf(text))
      expect(sentence.split(' ').length).toBeLessThanOrEqual(15);
  }
});
