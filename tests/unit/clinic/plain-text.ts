import { expect } from 'vitest';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../../site/clinic/reading-grade.ts';

/** All that a plain bench can say: whole sentences of fifteen words at most, without a number. */
export function expectShortAndWhole(everySentence: readonly string[]): void {
  for (const block of everySentence) {
    expect(block).toMatch(/[.?!]$/);
    expect(block).not.toMatch(/\d/);
    for (const sentence of sentencesOf(block)) {
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(15);
    }
  }
}

/** Grade at most 6 by Flesch–Kincaid and 8 by SMOG, over more sentences than so many. */
export function expectEasy(everySentence: readonly string[], moreThan: number): void {
  const counts = countText(everySentence);
  expect(counts.sentences).toBeGreaterThan(moreThan);
  expect(fleschKincaidGrade(counts)).toBeLessThanOrEqual(6);
  expect(smogGrade(counts)).toBeLessThanOrEqual(8);
}
