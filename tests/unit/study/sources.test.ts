import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { factText, scatterText } from '../../../site/sources/fact-text.ts';
import { idsIn } from '../../../site/sources/ids-in.ts';
import { nearest } from '../../../site/sources/nearest.ts';
import {
  authorsText,
  linkOf,
  placeText,
  shortReference,
  titleText,
} from '../../../site/sources/reference.ts';
import { factSchema, sourceSchema, type Source } from '../../../site/sources/schema.ts';

const read = (name: string) =>
  readFileSync(new URL(`../../../lessons/${name}`, import.meta.url), 'utf8');
const sources = sourceSchema.array().parse(JSON.parse(read('sources.json')));
const facts = factSchema.array().parse(parse(read('facts.yaml')));

const source = (change: Partial<Source>): Source => ({
  id: 'x',
  type: 'article-journal',
  author: [],
  custom: { howRead: 'abstract', readNote: '', missing: [], usedFor: 'numbers' },
  ...change,
});
const people = (...families: string[]) => families.map((family) => ({ family, given: 'A. B.-C.' }));
const year = (value: number) => ({ 'date-parts': [[value]] });

describe('the files of sources and facts', () => {
  test('are in order, and no id stands twice', () => {
    const ids = [...sources, ...facts].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(100);
  });

  test('every published number names a source there is', () => {
    const known = new Set(sources.map(({ id }) => id));
    const lost = facts.filter((fact) => fact.source !== undefined && !known.has(fact.source));
    expect(lost).toEqual([]);
  });
});

describe('a reference', () => {
  test.each([
    [source({ author: people('Ho'), issued: year(2013) }), 'Ho 2013'],
    [source({ author: people('Ho', 'An'), issued: year(2013) }), 'Ho and An 2013'],
    [source({ author: people('Ho', 'An', 'Li'), issued: year(2013) }), 'Ho et al. 2013'],
    [
      source({ author: [...people('Wu'), { literal: 'and others' }], issued: year(2005) }),
      'Wu et al. 2005',
    ],
    [source({ PMCID: 'PMC1' }), 'PMC1 (year not seen)'],
    [
      source({
        author: people('Ho'),
        issued: year(2013),
        custom: { howRead: 'excerpt', readNote: '', missing: ['co-authors'], usedFor: 'numbers' },
      }),
      'Ho et al. 2013',
    ],
  ])('is short in a sentence', (item, text) => {
    expect(shortReference(item)).toBe(text);
  });

  test('is written out with initials, journal and place', () => {
    const item = source({ author: people('Ho', 'An'), title: 'Why', volume: '5', page: '1–9' });
    expect(authorsText(item)).toBe('Ho ABC, An ABC');
    expect(placeText(item)).toBe('5:1–9');
    expect(placeText({ ...item, issue: '2' })).toBe('5(2):1–9');
    expect(titleText(item)).toBe('Why.');
    expect(titleText({ ...item, title: 'Why?' })).toBe('Why?');
  });

  test('says what was not seen', () => {
    expect(authorsText(source({}))).toBe('Authors not seen');
    expect(titleText(source({}))).toBe('Title not seen.');
    expect(placeText(source({}))).toBe('');
  });

  test('leads to a stable identifier before an address', () => {
    const all = { DOI: '10.1/x', PMID: '7', PMCID: 'PMC1', URL: 'https://example.org/a' };
    expect(linkOf(source(all))?.href).toBe('https://doi.org/10.1/x');
    expect(linkOf(source({ PMID: '7' }))?.text).toBe('PubMed 7');
    expect(linkOf(source({ URL: all.URL }))?.text).toBe('example.org');
    expect(linkOf(source({}))).toBeUndefined();
  });
});

describe('a fact in a sentence', () => {
  test.each([
    [{ value: 24, sd: 2.1, unit: 'mm' }, '24 ± 2.1 mm'],
    [{ value: 0.6, unit: 'ratio' }, '0.6'],
    [{ value: 20, unit: '%' }, '20 %'],
    [{ value: -9, unit: '°' }, '−9°'],
    [{ value: 8.8, unit: 'grade' }, 'grade 8.8'],
    [{ low: 0.45, high: 0.98, unit: 'ratio' }, '0.45 to 0.98'],
    [{ low: 3, high: 19.1, unit: 'mm' }, '3.0 to 19.1 mm'],
  ])('%o reads %s', (fact, text) => {
    expect(factText(fact).replaceAll('\u00a0', ' ')).toBe(text);
  });

  test('may leave its scatter out', () => {
    expect(factText({ value: 24, sd: 2.1, unit: 'mm' }, true)).toBe('24\u00a0mm');
  });

  test('has the rest told in its entry', () => {
    const fact = { value: 24, sd: 2.1, low: 19, high: 28, n: 140, unit: 'mm' };
    expect(scatterText(fact).replaceAll('\u00a0', ' ')).toBe(
      'mean ± standard deviation; from 19 to 28 mm; n = 140',
    );
  });
});

test('the ids a page shows are found in its text, each once', () => {
  const text = `A <Cite id="ho-2013" /> and <Fact plain id='depth' />, <Fact
    id="depth" /> but <Figure id="no" /> and <Facts id="no" />.`;
  expect(idsIn(text)).toEqual({ cites: ['ho-2013'], facts: ['depth'] });
});

test('a wrong id is answered with those like it', () => {
  const known = ['head-radius', 'head-thickness', 'face-height', 'bony-socket-depth'];
  expect(nearest('head-radius-coronal', known, 1)).toEqual(['head-radius']);
  expect(nearest('bone-depth', known, 1)).toEqual(['bony-socket-depth']);
});
