import * as v from 'valibot';

/** Benches that a question can have set. Each has a component here that asks it. */
export const settableBenches = ['peg-board'] as const;

/** A sentence or more; `{name}` in it stands for a computed value. */
const sentence = (what: string) =>
  v.pipe(
    v.string(`${what} is missing`),
    v.trim(),
    v.minLength(2, `${what} is empty`),
    v.maxLength(900, `${what} is longer than 900 characters`),
  );

const name = (what: string) =>
  v.pipe(
    v.string(`${what} is missing`),
    v.regex(/^[a-zA-Z][\w-]*$/, `${what} is a name of letters, digits and hyphens`),
  );

const common = {
  id: name('id'),
  objective: name('objective'),
  ask: sentence('ask (the question itself)'),
  /** The person or place in the question is made up; the page says so. */
  invented: v.optional(v.boolean('invented is true or false'), false),
  sources: v.optional(v.array(name('a source'), 'sources is a list'), []),
};

const option = v.strictObject({
  id: name('an option’s id'),
  text: sentence('an option’s text'),
  reason: sentence('an option’s reason'),
});

const choice = v.strictObject({
  ...common,
  kind: v.literal('choice'),
  /** Function that computes the values named in the texts, and the key. */
  compute: v.optional(name('compute')),
  key: name('key (the id of the right option)'),
  options: v.pipe(
    v.array(option, 'options is a list'),
    v.minLength(3, 'there are fewer than 3 options'),
    v.maxLength(4, 'there are more than 4 options'),
  ),
});

const slip = v.strictObject({
  value: name('a slip’s value (a computed value’s name)'),
  reason: sentence('a slip’s reason'),
});

const number = v.strictObject({
  ...common,
  kind: v.literal('number'),
  compute: name('compute'),
  answer: name('answer (a computed value’s name)'),
  /** Largest distance from the answer that counts as right, in the answer’s unit. */
  tolerance: v.pipe(
    v.number('tolerance is missing'),
    v.finite('tolerance is not finite'),
    v.gtValue(0, 'tolerance is not above 0'),
  ),
  reason: sentence('reason'),
  /** Wrong answers a known slip leads to. */
  slips: v.pipe(v.array(slip, 'slips is a list'), v.minLength(1, 'there is no slip')),
});

/** What a layout shows when it does not, or does, meet what is asked. */
const outcome = v.strictObject({
  id: name('an outcome’s id'),
  reason: sentence('an outcome’s reason'),
});

const set = v.strictObject({
  ...common,
  kind: v.literal('set'),
  /** The bench that is set. */
  bench: v.picklist(settableBenches, `bench is one of: ${settableBenches.join(', ')}`),
  /** Function that computes the values named in the texts, and the task. */
  compute: name('compute'),
  /** Why what meets the task meets it. */
  reason: sentence('reason'),
  outcomes: v.pipe(v.array(outcome, 'outcomes is a list'), v.minLength(1, 'there is no outcome')),
});

export const question = v.variant('kind', [choice, number, set], 'kind is choice, number or set');

const questionFile = v.strictObject({
  questions: v.pipe(
    v.array(question, 'questions is a list'),
    v.minLength(3, 'there are fewer than 3 questions'),
  ),
});

export type ChoiceSource = Readonly<v.InferOutput<typeof choice>>;
export type NumberSource = Readonly<v.InferOutput<typeof number>>;
export type SetSource = Readonly<v.InferOutput<typeof set>>;
export type QuestionSource = ChoiceSource | NumberSource | SetSource;

/**
 * Reads the questions of a lesson as they come out of its data file.
 *
 * @returns the questions, or what is wrong with the file, a sentence each, naming the question
 */
export function readQuestionFile(
  data: unknown,
):
  | { readonly questions: readonly QuestionSource[]; readonly problems: readonly [] }
  | { readonly questions: undefined; readonly problems: readonly string[] } {
  const parsed = v.safeParse(questionFile, data);
  if (parsed.success) return { questions: parsed.output.questions, problems: [] };
  return { questions: undefined, problems: parsed.issues.map(describe) };
}

/** "Question 2 (flat-socket), options, item 3, reason: it is missing." */
function describe(issue: v.BaseIssue<unknown>): string {
  const [, second, ...rest] = issue.path ?? [];
  if (second === undefined) return `The file: ${wordsOf(issue)}.`;
  const id = (second.value as { id?: unknown } | null)?.id;
  const where = typeof id === 'string' ? ` (${id})` : '';
  const inside = rest.flatMap(({ key }) =>
    typeof key === 'number' ? `item ${key + 1}` : typeof key === 'string' ? key : [],
  );
  const number = typeof second.key === 'number' ? second.key + 1 : '?';
  return `${[`Question ${number}${where}`, ...inside].join(', ')}: ${wordsOf(issue)}.`;
}

function wordsOf(issue: v.BaseIssue<unknown>): string {
  if (issue.type !== 'strict_object') return issue.message;
  if (issue.expected === 'never') return 'there is no such entry';
  return issue.received === 'undefined' ? 'it is missing' : 'it is not a set of entries';
}
