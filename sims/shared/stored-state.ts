import * as v from 'valibot';

/** Version of what this edition of the course writes. Raise it with every change a reader of the old form would misread. */
export const STATE_VERSION = 1;

const text = v.pipe(v.string(), v.maxLength(200));
const time = v.pipe(v.number(), v.finite(), v.minValue(0));
const given = v.union([text, v.pipe(v.number(), v.finite())]);

const prediction = v.object({
  /** Option or number committed to; null where the visitor read on without predicting. */
  given: v.nullable(given),
  /** Whether the computed answer has been shown. */
  isShown: v.boolean(),
  /** When, ms since 1970. */
  at: time,
});

const answer = v.object({
  /** Option or number last given. */
  given,
  isRight: v.boolean(),
  /** How many times an answer was given, this one included. */
  tries: v.pipe(v.number(), v.integer(), v.minValue(1)),
  at: time,
});

const lesson = v.object({
  predictions: v.record(text, prediction),
  answers: v.record(text, answer),
});

const schema = v.object({
  version: v.literal(STATE_VERSION),
  lessons: v.record(text, lesson),
});

const versioned = v.object({ version: v.pipe(v.number(), v.integer()) });

export type Prediction = Readonly<v.InferOutput<typeof prediction>>;
export type Answer = Readonly<v.InferOutput<typeof answer>>;
export type LessonState = Readonly<v.InferOutput<typeof lesson>>;
export type StoredState = Readonly<v.InferOutput<typeof schema>>;

export const emptyState: StoredState = { version: STATE_VERSION, lessons: {} };

/** What a stored text turned out to be. */
export type Reading =
  | { readonly kind: 'nothing' | 'newer' | 'unreadable' }
  | { readonly kind: 'state'; readonly state: StoredState };

/**
 * Reads a stored text.
 *
 * @param text as it came out of storage; null where there is none
 * @returns the state, or why there is none: nothing stored, stored by a newer version, or unreadable
 */
export function readState(text: string | null): Reading {
  if (text === null) return { kind: 'nothing' };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { kind: 'unreadable' };
  }
  const stamp = v.safeParse(versioned, value);
  if (stamp.success && stamp.output.version > STATE_VERSION) return { kind: 'newer' };
  const parsed = v.safeParse(schema, value);
  return parsed.success ? { kind: 'state', state: parsed.output } : { kind: 'unreadable' };
}

/** The state with one entry of a lesson set, or taken out where `entry` is undefined. */
export function withEntry<Part extends keyof LessonState>(
  state: StoredState,
  lessonId: string,
  part: Part,
  id: string,
  entry: LessonState[Part][string] | undefined,
): StoredState {
  const before = state.lessons[lessonId] ?? { predictions: {}, answers: {} };
  const others = Object.entries(before[part]).filter(([key]) => key !== id);
  const entries = entry === undefined ? others : [...others, [id, entry] as const];
  return {
    ...state,
    lessons: { ...state.lessons, [lessonId]: { ...before, [part]: Object.fromEntries(entries) } },
  };
}
