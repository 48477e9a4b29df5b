import * as v from 'valibot';
import type { Range } from './range.ts';

/** One thing a link can set: its key in the address, its name for a person, how its text is read and written. */
export interface UrlField<Value> {
  readonly key: string;
  readonly name: string;
  readonly fallback: Value;
  /** What is allowed, in words: "30 to 60 mm". */
  readonly allowed: string;
  readonly schema: v.GenericSchema<string, Value>;
  readonly write: (value: Value) => string;
}

export type UrlFields<State> = { readonly [Name in keyof State]: UrlField<State[Name]> };

/** What a link gave: a whole state, and one line naming what was not taken ('' where all was). */
export interface ReadState<State> {
  readonly state: State;
  readonly problem: string;
}

/** Decimals a link carries: finer than any control's step. */
const DECIMALS = 4;
const LONGEST_NUMBER = 24;

/** A number within a control's range; it need not sit on a step, because a shape carried over may not. */
export function numberField(
  key: string,
  name: string,
  range: Range,
  fallback: number,
): UrlField<number> {
  return {
    key,
    name,
    fallback,
    allowed: `${range.min} to ${range.max}${range.unit === '' ? '' : ` ${range.unit}`}`,
    schema: v.pipe(
      v.string(),
      v.maxLength(LONGEST_NUMBER),
      v.regex(/^-?\d+(?:\.\d+)?$/),
      v.transform(Number),
      v.number(),
      v.finite(),
      v.minValue(range.min),
      v.maxValue(range.max),
      v.transform((value) => (value === 0 ? 0 : value)),
    ),
    write: (value) => String(Number(value.toFixed(DECIMALS))),
  };
}

/** One of a few words. */
export function choiceField<const Choice extends string>(
  key: string,
  name: string,
  choices: readonly Choice[],
  fallback: Choice,
): UrlField<Choice> {
  return {
    key,
    name,
    fallback,
    allowed: choices.join(', '),
    schema: v.picklist(choices),
    write: (value) => value,
  };
}

/** On or off, written 1 or 0. */
export function switchField(key: string, name: string, fallback: boolean): UrlField<boolean> {
  return {
    key,
    name,
    fallback,
    allowed: '1 or 0',
    schema: v.pipe(
      v.string(),
      v.picklist(['0', '1']),
      v.transform((text) => text === '1'),
    ),
    write: (value) => (value ? '1' : '0'),
  };
}

/**
 * Reads a state from an address's query. Keys it does not know are passed over; the first of a repeated key counts.
 *
 * @param query with or without its question mark; any text at all
 */
export function readUrlState<State extends object>(
  fields: UrlFields<State>,
  query: string,
): ReadState<State> {
  const given = new URLSearchParams(query);
  const state: Partial<State> = {};
  const refused: string[] = [];
  for (const name of Object.keys(fields) as (keyof State)[]) {
    const field = fields[name];
    state[name] = field.fallback;
    const text = given.get(field.key);
    if (text === null) continue;
    const answer = v.safeParse(field.schema, text);
    if (answer.success) state[name] = answer.output;
    else refused.push(`${field.name} “${shortened(text)}” (allowed: ${field.allowed})`);
  }
  return { state: state as State, problem: problemLine(refused) };
}

/** A state as a query without its question mark; what stands at its default is left out, so the default is ''. */
export function writeUrlState<State extends object>(
  fields: UrlFields<State>,
  state: State,
): string {
  const query = new URLSearchParams();
  for (const name of Object.keys(fields) as (keyof State)[]) {
    const field = fields[name];
    const text = field.write(state[name]);
    if (text !== field.write(field.fallback)) query.set(field.key, text);
  }
  return query.toString();
}

/** Browsers refuse an address changed many times a second, as by a key held down. */
const SETTLING = 200;
let settling: ReturnType<typeof setTimeout> | undefined;

/** Puts a query in the address bar once changes pause, without a new entry in the visitor's history. */
export function replacePageQuery(query: string): void {
  clearTimeout(settling);
  settling = setTimeout(() => {
    const { pathname, hash } = window.location;
    window.history.replaceState(window.history.state, '', pathname + (query && `?${query}`) + hash);
  }, SETTLING);
}

/** The full address of a bench's own page with a state in it. */
export function benchLink(bench: string, query: string): string {
  const base = import.meta.env.BASE_URL.replace(/\/$/, '');
  return `${window.location.origin}${base}/bench/${bench}/${query && `?${query}`}`;
}

function problemLine(refused: readonly string[]): string {
  if (refused.length === 0) return '';
  const kept =
    refused.length === 1 ? 'Its default stands instead.' : 'Their defaults stand instead.';
  return `Not taken from the link: ${refused.join('; ')}. ${kept}`;
}

/** A stranger's text made fit to show: no control or direction marks, and no more than a few words of it. */
function shortened(text: string): string {
  const plain = text.replace(/[\p{C}\p{Z}]+/gu, ' ').trim();
  const letters = Array.from(plain);
  return letters.length > 16 ? `${letters.slice(0, 15).join('')}…` : plain;
}
