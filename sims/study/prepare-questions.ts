import type { ChoiceSource, NumberSource, QuestionSource, SetSource } from './question-file.ts';
import { writeQuantity, type Quantity } from './quantity.ts';

/** What a lesson's function computes for one question. */
export interface Computed {
  /** Every number the question's texts may name. */
  readonly values: Readonly<Record<string, Quantity>>;
  /** Id of the option the computation finds right, for a choice; left out where it only supplies values. */
  readonly key?: string | undefined;
  /** What is asked of a bench that is set, as plain data of that bench's own form. */
  readonly task?: unknown;
}

/** A lesson's functions by the name its questions use. */
export type Answers = Readonly<Record<string, () => Computed>>;

interface Prepared {
  readonly id: string;
  readonly objective: string;
  readonly ask: string;
  readonly isInvented: boolean;
  readonly sources: readonly string[];
}

export interface Option {
  readonly id: string;
  readonly text: string;
  readonly reason: string;
}

/** A question with one best answer, its options in the order shown. */
export interface ChoiceQuestion extends Prepared {
  readonly kind: 'choice';
  readonly key: string;
  readonly options: readonly Option[];
  /** Whether the options are numbers, shown by rising value. */
  readonly isNumeric: boolean;
}

/** A question answered by a number. */
export interface NumberQuestion extends Prepared {
  readonly kind: 'number';
  readonly answer: Quantity;
  readonly tolerance: number;
  readonly reason: string;
  readonly slips: readonly { readonly value: Quantity; readonly reason: string }[];
}

/** A question answered by setting a bench. */
export interface SetQuestion<Task> extends Prepared {
  readonly kind: 'set';
  readonly bench: SetSource['bench'];
  readonly task: Task;
  readonly reason: string;
  readonly outcomes: readonly { readonly id: string; readonly reason: string }[];
}

/** A question answered in words or numbers. */
export type AskedQuestion = ChoiceQuestion | NumberQuestion;
export type Question = AskedQuestion | SetQuestion<unknown>;

/**
 * A question with every computed value written into its texts.
 *
 * @throws Error naming the question where a function, a value or an option it names does not exist, or where the key
 * declared is not the one computed
 */
export function prepareQuestion(source: QuestionSource, answers: Answers): Question {
  const fail = (problem: string): never => {
    throw new Error(`Question ${source.id}: ${problem}.`);
  };
  const compute = source.compute === undefined ? undefined : answers[source.compute];
  if (source.compute !== undefined && compute === undefined) {
    fail(`there is no function ${source.compute}; known: ${Object.keys(answers).join(', ')}`);
  }
  const computed = compute?.() ?? { values: {} };
  const valueOf = (name: string): Quantity =>
    computed.values[name] ??
    fail(`nothing computes {${name}}; known: ${Object.keys(computed.values).join(', ')}`);
  const write = (text: string): string =>
    text.replace(/\{([^{}]*)\}/g, (_, name: string) => writeQuantity(valueOf(name)));

  const { id, objective, invented: isInvented, sources } = source;
  const shared = { id, objective, ask: write(source.ask), isInvented, sources };
  const tools = { fail, valueOf, write };
  if (source.kind === 'choice') return { ...shared, ...prepareChoice(source, computed, tools) };
  if (source.kind === 'set') return { ...shared, ...prepareSet(source, computed, tools) };
  return { ...shared, ...prepareNumber(source, tools) };
}

interface Tools {
  readonly fail: (problem: string) => never;
  readonly valueOf: (name: string) => Quantity;
  readonly write: (text: string) => string;
}

function prepareChoice(source: ChoiceSource, computed: Computed, { fail, valueOf, write }: Tools) {
  const { key } = source;
  if (!source.options.some(({ id }) => id === key)) fail(`no option has the key’s id, ${key}`);
  if ('key' in computed && computed.key !== key) {
    fail(`the key is ${key}, but ${source.compute ?? 'nothing'} finds ${computed.key ?? 'none'}`);
  }
  const rows = source.options.map(({ id, text, reason }) => {
    const bare = /^\{([^{}]*)\}$/.exec(text)?.[1];
    const value = bare === undefined ? undefined : valueOf(bare).value;
    return { value, option: { id, text: write(text), reason: write(reason) } };
  });
  const isNumeric = rows.every(({ value }) => value !== undefined);
  const ordered = isNumeric ? rows.toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0)) : rows;
  return { kind: 'choice' as const, key, options: ordered.map(({ option }) => option), isNumeric };
}

function prepareNumber(source: NumberSource, { fail, valueOf, write }: Tools) {
  const { tolerance } = source;
  const answer = valueOf(source.answer);
  const slips = source.slips.map(({ value, reason }) => ({
    value: valueOf(value),
    reason: write(reason),
  }));
  for (const { value } of slips) {
    if (Math.abs(value.value - answer.value) <= 2 * tolerance) {
      fail(`the slip ${writeQuantity(value)} lies too near the answer ${writeQuantity(answer)}`);
    }
  }
  return { kind: 'number' as const, answer, tolerance, reason: write(source.reason), slips };
}

function prepareSet(source: SetSource, { task }: Computed, { fail, write }: Tools) {
  const { bench, compute, outcomes } = source;
  if (task === undefined) fail(`${compute} gives no task for ${bench}`);
  return {
    kind: 'set' as const,
    bench,
    task,
    reason: write(source.reason),
    outcomes: outcomes.map(({ id, reason }) => ({ id, reason: write(reason) })),
  };
}
