import { readFileSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { materials, type Quantity } from '../../../sims/mechanics/index.ts';

const read = (name: string): string =>
  readFileSync(new URL(`../../../lessons/${name}`, import.meta.url), 'utf8');

const id = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
const text = v.pipe(v.string(), v.trim(), v.nonEmpty());
/** Starts as a sentence and ends as one. */
const sentence = v.pipe(v.string(), v.regex(/^[A-Z0-9].*\.$/su));
const count = v.pipe(v.number(), v.integer(), v.minValue(1));

const waysToRead = ['read', 'abstract', 'excerpt', 'quoted', 'from memory'] as const;

const author = v.union([
  v.strictObject({ family: text, given: v.optional(text) }),
  v.strictObject({ literal: text }),
]);

const sourceSchema = v.strictObject({
  id,
  type: v.picklist([
    'article-journal',
    'book',
    'paper-conference',
    'report',
    'standard',
    'webpage',
  ]),
  title: v.optional(text),
  author: v.optional(v.pipe(v.array(author), v.nonEmpty())),
  issued: v.optional(v.strictObject({ 'date-parts': v.tuple([v.tuple([count])]) })),
  'container-title': v.optional(text),
  publisher: v.optional(text),
  number: v.optional(text),
  volume: v.optional(text),
  issue: v.optional(text),
  page: v.optional(text),
  DOI: v.optional(v.pipe(v.string(), v.regex(/^10\.\d{4,}\/\S+$/))),
  PMID: v.optional(v.pipe(v.string(), v.regex(/^\d+$/))),
  PMCID: v.optional(v.pipe(v.string(), v.regex(/^PMC\d+$/))),
  URL: v.optional(v.pipe(v.string(), v.url())),
  custom: v.strictObject({
    howRead: v.picklist(waysToRead),
    readNote: sentence,
    missing: v.array(text),
    /** A source of method gives formulas or conventions, no number. */
    usedFor: v.picklist(['numbers', 'method']),
  }),
});

const units = [
  'mm',
  'µm',
  '°',
  'ratio',
  'odds ratio',
  '%',
  '% of body weight',
  'N',
  'MPa',
  'standard deviations',
  'grade',
  'words',
  'options',
  'cycles',
  '°C',
  'g',
] as const;

const factSchema = v.pipe(
  v.strictObject({
    id,
    kind: v.picklist(['published', 'common practice', 'teaching value']),
    value: v.optional(v.number()),
    sd: v.optional(v.pipe(v.number(), v.gtValue(0))),
    low: v.optional(v.number()),
    high: v.optional(v.number()),
    n: v.optional(count),
    unit: v.picklist(units),
    what: sentence,
    source: v.optional(id),
    howRead: v.picklist([...waysToRead, 'common practice', 'teaching value']),
    note: v.optional(sentence),
  }),
  v.check((fact) => (fact.low === undefined) === (fact.high === undefined), 'low without high'),
  v.check((fact) => fact.value !== undefined || fact.low !== undefined, 'no number'),
  v.check((fact) => fact.sd === undefined || fact.value !== undefined, 'sd without a mean'),
  v.check(
    ({ low = -Infinity, value = low, high = Infinity }) =>
      low < high && low <= value && value <= high,
    'the value lies outside its range',
  ),
  v.check(
    (fact) => (fact.kind === 'published') === (fact.source !== undefined),
    'published needs a source, and nothing else has one',
  ),
  v.check(
    (fact) => fact.kind === 'published' || fact.howRead === fact.kind,
    'common practice and teaching values are read as what they are',
  ),
  v.check(
    (fact) => fact.kind !== 'published' || waysToRead.some((way) => way === fact.howRead),
    'a published number is not common practice or a teaching value',
  ),
);

type Source = v.InferOutput<typeof sourceSchema>;
type Fact = v.InferOutput<typeof factSchema>;

const rawSources = JSON.parse(read('sources.json')) as { id: string }[];
const rawFacts = parse(read('facts.yaml')) as { id: string }[];

/** What the schema says is wrong, in words; '' where all is well. */
function complaint(schema: v.GenericSchema, entry: unknown): string {
  const result = v.safeParse(schema, entry);
  if (result.success) return '';
  return result.issues.map((issue) => `${v.getDotPath(issue) ?? ''}: ${issue.message}`).join('; ');
}

const sources = rawSources as Source[];
const facts = rawFacts as Fact[];
const sourceOf = new Map(sources.map((source) => [source.id, source]));

describe('sources.json', () => {
  test.each(rawSources.map((source) => [source.id, source]))('%s: fits the schema', (_, source) => {
    expect(complaint(sourceSchema, source)).toBe('');
  });

  test('sources.json: no id twice', () => {
    expect(sourceOf.size).toBe(sources.length);
  });

  test.each(sources.map((source) => [source.id, source]))(
    '%s: what is left out is owned to',
    (_, source) => {
      const missing = source.custom.missing.join('; ');
      const mentions = (word: string): boolean => missing.includes(word);
      if (source.title === undefined) expect(mentions('title')).toBe(true);
      if (source.author === undefined) expect(mentions('authors')).toBe(true);
      if (source.issued === undefined) expect(mentions('year')).toBe(true);
      if (source.type === 'article-journal') {
        if (source['container-title'] === undefined) expect(mentions('journal')).toBe(true);
        const isPlaced = source.page !== undefined || source.DOI !== undefined;
        expect(isPlaced || mentions('pages')).toBe(true);
      }
    },
  );

  test.each(sources.map((source) => [source.id, source]))(
    '%s: its note says how it was read',
    (_, source) => {
      const { howRead, readNote } = source.custom;
      const words: Record<(typeof waysToRead)[number], RegExp> = {
        read: /\bread\b/i,
        abstract: /\babstract\b/i,
        excerpt: /\b(table|page|figure|chapter)\b/i,
        quoted: /\b(quote[sd]?|says)\b/i,
        'from memory': /\bfrom memory\b/i,
      };
      expect(readNote).toMatch(words[howRead]);
    },
  );
});

describe('facts.yaml', () => {
  test.each(rawFacts.map((fact) => [fact.id, fact]))('%s: fits the schema', (_, fact) => {
    expect(complaint(factSchema, fact)).toBe('');
  });

  test('facts.yaml: no id twice', () => {
    expect(new Set(facts.map((fact) => fact.id)).size).toBe(facts.length);
  });

  test.each(facts.flatMap((fact) => (fact.source ? [[fact.id, fact, fact.source] as const] : [])))(
    '%s: its source exists and was read no less closely',
    (_, fact, sourceId) => {
      const source = sourceOf.get(sourceId);
      expect(source?.custom.usedFor).toBe('numbers');
      // A number may be remembered from a paper whose abstract was read; it cannot have been read where nothing was.
      const allowed = [source?.custom.howRead, 'from memory'];
      expect(allowed).toContain(fact.howRead);
    },
  );

  test('facts.yaml and the table of materials: every source of numbers gives one', () => {
    const inTable = Object.values(materials).flatMap((material) =>
      Object.values(material).flatMap((part: string | Quantity) =>
        typeof part === 'string' ? [] : part.sources,
      ),
    );
    const used = new Set([...facts.map((fact) => fact.source), ...inTable]);
    const idle = sources.filter(({ custom }) => custom.usedFor === 'numbers');
    expect(idle.map((source) => source.id).filter((name) => !used.has(name))).toStrictEqual([]);
  });
});

describe('the schemas', () => {
  const good = facts.find((fact) => fact.id === 'head-radius');
  test.each([
    ['an unknown field', { colour: 'red' }],
    ['a range upside down', { low: 28, high: 19 }],
    ['a mean outside its range', { value: 30 }],
    ['no number at all', { value: undefined, sd: undefined, low: undefined, high: undefined }],
    ['a unit nobody knows', { unit: 'cm' }],
    ['a published number without a source', { source: undefined }],
    ['a reading nobody did', { howRead: 'guessed' }],
    ['a published number called a teaching value', { howRead: 'teaching value' }],
    ['half a sentence', { what: 'radius of the head' }],
  ])('the schemas: refuse %s', (_, change) => {
    expect(complaint(factSchema, good)).toBe('');
    expect(complaint(factSchema, { ...good, ...change })).not.toBe('');
  });
});
