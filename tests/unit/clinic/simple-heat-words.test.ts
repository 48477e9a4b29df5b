import { describe, expect, test } from 'vitest';
import { heatOf, boneAt } from '../../../sims/benches/gap-and-heat/heat.ts';
import {
  everySentence,
  gaps,
  moments,
  outcomeOf,
  pictureWords,
  settingOf,
  warmthWords,
} from '../../../sims/benches/gap-and-heat/simple-words.ts';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../../site/clinic/reading-grade.ts';

const HOTTEST = 2;

describe('what the plain bench says of heat', () => {
  test.each(gaps)('$text: its hottest moment is the hottest of the half hour', ({ name }) => {
    const setting = settingOf(name, HOTTEST);
    const { peakAtBone } = heatOf(setting, setting.measured);
    const shown = boneAt(heatOf(setting, setting.measured), setting.time);
    expect(peakAtBone - shown).toBeLessThan(0.6);
    expect(warmthWords(peakAtBone)).toBe(warmthWords(shown));
  });

  test('a small gap makes the bone no more than warm, a big one too hot', () => {
    expect(outcomeOf('thin', HOTTEST)).toContain('is warm');
    expect(outcomeOf('middle', HOTTEST)).toContain('hot');
    expect(outcomeOf('thick', HOTTEST)).toContain('too hot');
    for (const { name } of gaps) expect(outcomeOf(name, 0)).toContain('is not hot');
  });

  test('no sentence is over fifteen words, and none has a number', () => {
    for (const block of everySentence) {
      expect(block).toMatch(/[.?!]$/);
      expect(block).not.toMatch(/\d/);
      for (const sentence of sentencesOf(block)) {
        expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(15);
      }
    }
  });

  test('grade at most 6 by Flesch–Kincaid and 8 by SMOG', () => {
    const counts = countText([
      ...gaps.map(({ name }) => pictureWords(name)),
      ...gaps.flatMap(({ name }) => moments.map((_, place) => outcomeOf(name, place))),
    ]);
    expect(counts.sentences).toBeGreaterThanOrEqual(30);
    expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
    expect(smogGrade(counts)).toBeLessThanOrEqual(8);
  });
});
