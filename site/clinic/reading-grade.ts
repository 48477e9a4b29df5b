import { syllable } from 'syllable';

/** What the two reading grades are made of. */
export interface TextCounts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
  /** Words of three syllables or more. */
  readonly polysyllables: number;
  /** Words in the longest sentence. */
  readonly longestSentence: number;
}

const sentenceEnd = /(?<=[.!?…])["”’)]*\s+/u;
const word = /[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu;

/** The sentences of one paragraph, list item or question. One without a full stop counts as a sentence too. */
export function sentencesOf(block: string): readonly string[] {
  return block
    .split(sentenceEnd)
    .map((sentence) => sentence.trim())
    .filter((sentence) => wordsOf(sentence).length > 0);
}

/** The words of a text. A hyphen or an apostrophe joins: "grown-up" and "don't" are one word each. */
export function wordsOf(text: string): readonly string[] {
  return text.match(word) ?? [];
}

/**
 * Counts of a text given paragraph by paragraph, headings left out.
 *
 * @throws RangeError for a number in figures, which has no syllables to count: write it out
 */
export function countText(blocks: readonly string[]): TextCounts {
  const sentences = blocks.flatMap(sentencesOf).map(wordsOf);
  const words = sentences.flat();
  const syllables = words.map(syllablesOf);
  return {
    sentences: sentences.length,
    words: words.length,
    syllables: syllables.reduce((sum, count) => sum + count, 0),
    polysyllables: syllables.filter((count) => count >= 3).length,
    longestSentence: Math.max(0, ...sentences.map(({ length }) => length)),
  };
}

/**
 * Flesch–Kincaid grade: the school year (United States) whose pupils should follow the text.
 *
 * 0.39 words/sentences + 11.8 syllables/words − 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975; from memory).
 *
 * @throws RangeError where there is no text
 */
export function fleschKincaidGrade({ sentences, words, syllables }: TextCounts): number {
  requireText(sentences);
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/**
 * SMOG grade, a stricter one that looks for full comprehension: 1.043 √(30 polysyllables/sentences) + 3.129
 * (McLaughlin 1969; from memory). It was fitted on samples of thirty sentences; of fewer it is only a hint.
 *
 * @throws RangeError where there is no text
 */
export function smogGrade({ sentences, polysyllables }: TextCounts): number {
  requireText(sentences);
  return 1.043 * Math.sqrt((30 * polysyllables) / sentences) + 3.129;
}

function syllablesOf(text: string): number {
  if (/\p{N}/u.test(text)) throw new RangeError(`word is "${text}"; allowed: words of letters`);
  return syllable(text);
}

function requireText(sentences: number): void {
  if (sentences < 1) throw new RangeError(`sentences is ${sentences}; allowed: 1 or more`);
}
