import type { ChoiceQuestion, Question } from './prepare-questions.ts';
import type { QuestionSource } from './question-file.ts';

/** Wordings that test reading, not understanding. */
const banned: readonly (readonly [RegExp, string])[] = [
  [/\b(all|none|any|neither) of (the above|these|them)\b/i, 'points at the other options'],
  [/\b(both|either) [a-d] (and|or) [a-d]\b/i, 'points at the other options'],
  [/\bexcept\b/i, 'asks for an exception'],
  [/\bNOT\b/, 'asks for what is not so'],
];

function textsOf(question: QuestionSource): readonly string[] {
  const { ask } = question;
  if (question.kind === 'choice') {
    return [ask, ...question.options.flatMap(({ text, reason }) => [text, reason])];
  }
  const known = question.kind === 'set' ? question.outcomes : question.slips;
  return [ask, question.reason, ...known.map(({ reason }) => reason)];
}

/**
 * What is wrong with one question as written, a sentence each.
 *
 * @param objectives ids of the lesson's objectives
 */
export function questionProblems(
  question: QuestionSource,
  objectives: readonly string[],
): readonly string[] {
  const problems: string[] = [];
  const say = (problem: string) => problems.push(`Question ${question.id}: ${problem}.`);
  if (!objectives.includes(question.objective)) {
    say(`there is no objective ${question.objective}; the lesson has ${objectives.join(', ')}`);
  }
  for (const text of textsOf(question)) {
    for (const [pattern, what] of banned) {
      const found = pattern.exec(text)?.[0];
      if (found !== undefined) say(`“${found}” ${what}`);
    }
    const typed = /\d[\d.,]*/.exec(text.replace(/\{[^{}]*\}/g, ''))?.[0];
    if (typed !== undefined) say(`the number ${typed} is typed; let it be computed: {name}`);
  }
  if (question.kind === 'choice') {
    const ids = new Set(question.options.map(({ id }) => id));
    if (ids.size < question.options.length) say('two options have the same id');
  }
  if (question.kind === 'set') {
    const ids = new Set(question.outcomes.map(({ id }) => id));
    if (ids.size < question.outcomes.length) say('two outcomes have the same id');
  }
  return problems;
}

/**
 * What is wrong with a lesson's questions taken together, a sentence each: repeated ids, options that read the same,
 * a key that gives itself away by its length or its place.
 */
export function setProblems(questions: readonly Question[]): readonly string[] {
  const problems: string[] = [];
  const ids = questions.map(({ id }) => id);
  for (const id of ids.filter((id, i) => ids.indexOf(id) < i)) {
    problems.push(`Two questions have the id ${id}.`);
  }
  const choices = questions.filter((question) => question.kind === 'choice');
  for (const { id, options } of choices) {
    if (new Set(options.map(({ text }) => text)).size < options.length) {
      problems.push(`Question ${id}: two options read the same.`);
    }
  }
  const worded = choices.filter(({ isNumeric }) => !isNumeric);
  const longest = worded.filter(isKeyLongest).length;
  if (worded.length > 1 && longest > worded.length / 2) {
    problems.push(`The right option is the longest in ${longest} of ${worded.length} questions.`);
  }
  for (let place = 0; place < 4; place += 1) {
    const count = choices.filter((question) => keyPlace(question) === place).length;
    if (choices.length > 2 && count > Math.ceil(choices.length / 2)) {
      const letter = 'ABCD'[place] ?? '';
      problems.push(`The right option is ${letter} in ${count} of ${choices.length} questions.`);
    }
  }
  return problems;
}

function keyPlace({ options, key }: ChoiceQuestion): number {
  return options.findIndex(({ id }) => id === key);
}

function isKeyLongest({ options, key }: ChoiceQuestion): boolean {
  const keyLength = options.find(({ id }) => id === key)?.text.length ?? 0;
  return options.every(({ id, text }) => id === key || text.length < keyLength);
}
