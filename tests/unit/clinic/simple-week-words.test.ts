import { describe, expect, test } from 'vitest';
import { mostly, runOf } from '../../../sims/benches/week-by-week/run.ts';
import { WEEKS } from '../../../sims/benches/week-by-week/settings.ts';
import {
  everySentence,
  moves,
  outcomeOf,
  pictureWords,
  plainRun,
  plainSetting,
  whenWords,
} from '../../../sims/benches/week-by-week/simple-words.ts';
import { expectEasy, expectShortAndWhole } from './plain-text.ts';

describe('what the plain bench does', () => {
  test.each(moves)(
    '$text: its weeks are those of the bench, and the cup bears its load',
    (move) => {
      const run = plainRun(move.name);
      expect(run).toEqual(runOf(plainSetting(move.name)));
      expect(run.weeks).toHaveLength(WEEKS);
      expect(run.weeks.every(({ outcome }) => outcome === 'balanced')).toBe(true);
    },
  );

  test('bone grows in every gap of the cup that hardly moves, and in none of the other', () => {
    const [little, much] = [plainRun('little'), plainRun('much')];
    expect(little.weeks[0]?.places.map(({ bone }) => bone)).toEqual(Array(12).fill('grows'));
    expect(little.share).toBeGreaterThan(0.5);
    expect(mostly(much.weeks[0]?.places ?? [])).toBe('is lost');
    expect(much.weeks.at(-1)?.places.every(({ bone }) => bone === 'is lost')).toBe(true);
    expect(much.share).toBe(0);
    expect(much.weeks[0]?.motion).toBeGreaterThan(10 * (little.weeks[0]?.motion ?? NaN));
  });
});

describe('what it says', () => {
  test('the outcome is told when the weeks have gone by, and not before', () => {
    const [little, much] = [plainRun('little'), plainRun('much')];
    expect(outcomeOf(little, 0)).toBe(outcomeOf(much, 0));
    expect(outcomeOf(little, WEEKS - 0.1)).toBe(outcomeOf(much, 0.1));
    expect(outcomeOf(little, WEEKS)).toMatch(/^Bone has filled/);
    expect(outcomeOf(much, WEEKS)).toMatch(/^Soft tissue has filled/);
    expect(outcomeOf(runOf({ ...plainSetting('little'), press: 500 }), WEEKS)).toMatch(
      /has not filled the gaps/,
    );
  });

  test('time goes from the first day to months', () => {
    expect([0, 0.9, 1, 12.9, 13, WEEKS].map(whenWords)).toEqual([
      'first day',
      'first day',
      'weeks later',
      'weeks later',
      'months later',
      'months later',
    ]);
    expect(pictureWords('much')).toMatch(/moves a lot/);
  });

  test('no sentence is over fifteen words, and none has a number', () => {
    expectShortAndWhole(everySentence);
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    expectEasy(everySentence, 12);
  });
});
