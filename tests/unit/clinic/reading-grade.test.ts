import { describe, expect, test } from 'vitest';
import {
  countText,
  fleschKincaidGrade,
  sentencesOf,
  smogGrade,
  wordsOf,
} from '../../../site/clinic/reading-grade.ts';

describe('counting', () => {
  test('one short sentence, by hand', () => {
    expect(countText(['The cat sat on the mat.'])).toEqual({
      sentences: 1,
      words: 6,
      syllables: 6,
      polysyllables: 0,
      longestSentence: 6,
    });
  });

  test('paragraphs, questions and a line without a full stop, by hand', () => {
    // mus-cles 2, op-er-a-tion 4, shoul-der 2, sur-ger-y 3, the rest 1 each.
    const blocks = ['Muscles press. Do they?', 'An operation!', 'Shoulder surgery'];
    expect(countText(blocks)).toEqual({
      sentences: 4,
      words: 8,
      syllables: 2 + 1 + 1 + 1 + 1 + 4 + 2 + 3,
      polysyllables: 2,
      longestSentence: 2,
    });
  });

  test.each([
    ['It held. Then it slipped.', ['It held.', 'Then it slipped.']],
    ['He said “Push.” It held!', ['He said “Push.', 'It held!']],
    ['Good: it holds', ['Good: it holds']],
    [' … ', []],
  ])('sentences of %s', (text, sentences) => {
    expect(sentencesOf(text)).toEqual(sentences);
  });

  test('a hyphen and an apostrophe join, a dash does not', () => {
    expect(wordsOf("Don't use a well-known cup – or do")).toHaveLength(7);
    expect(wordsOf('Don’t')).toEqual(['Don’t']);
  });

  test('a figure has no syllables to count, and is refused', () => {
    expect(() => countText(['Wait 20 seconds.'])).toThrow(/word is "20"/);
  });

  test('every word the pages use of three syllables or more is known to be one', () => {
    const long = ['education', 'clinically', 'surgery', 'different', 'operation'];
    const short = ['shoulder', 'muscles', 'questions', 'plastic', 'advice', 'twenty', 'pressed'];
    expect(countText([long.join(' ')]).polysyllables).toBe(long.length);
    expect(countText([short.join(' ')]).polysyllables).toBe(0);
  });
});

describe('grades', () => {
  const counts = { sentences: 1, words: 6, syllables: 6, polysyllables: 0, longestSentence: 6 };

  test('Flesch–Kincaid by hand: 0.39 · 6 + 11.8 · 1 − 15.59', () => {
    expect(fleschKincaidGrade(counts)).toBeCloseTo(-1.45, 12);
  });

  test('Flesch–Kincaid by hand: 100 words, 5 sentences, 150 syllables', () => {
    const text = { ...counts, sentences: 5, words: 100, syllables: 150 };
    expect(fleschKincaidGrade(text)).toBeCloseTo(7.8 + 17.7 - 15.59, 12);
  });

  test('SMOG by hand: no long word is 3.129; nine in thirty sentences are 1.043 · 3 more', () => {
    expect(smogGrade({ ...counts, sentences: 30 })).toBe(3.129);
    expect(smogGrade({ ...counts, sentences: 30, polysyllables: 9 })).toBeCloseTo(6.258, 12);
  });

  test('SMOG scales a shorter text to thirty sentences', () => {
    const half = { ...counts, sentences: 15, polysyllables: 8 };
    const whole = { ...counts, sentences: 30, polysyllables: 16 };
    expect(smogGrade(half)).toBeCloseTo(smogGrade(whole), 12);
  });

  test.each([fleschKincaidGrade, smogGrade])('no text has no grade', (grade) => {
    expect(() => grade(countText([]))).toThrow(RangeError);
  });

  test('a leaflet of the hard kind is told from an easy one', () => {
    const hard = countText([
      'Postoperative rehabilitation following arthroplasty necessitates individualised physiotherapeutic supervision.',
    ]);
    const easy = countText([
      'After surgery you will work with a therapist. Each plan is made for one person.',
    ]);
    expect(fleschKincaidGrade(hard)).toBeGreaterThan(20);
    expect(fleschKincaidGrade(easy)).toBeLessThan(6);
  });
});
