import { expect, test } from 'vitest';
import { shortReference } from '../../../site/sources/reference.ts';
import type { Source } from '../../../site/sources/schema.ts';

const bare: Source = {
  id: 'invented',
  type: 'article-journal',
  author: [],
  custom: { howRead: 'abstract', readNote: 'invented', missing: [], usedFor: 'numbers' },
};
const [one, two, three] = [{ family: 'Able' }, { family: 'Baker' }, { family: 'Cole' }];
const issued = { 'date-parts': [[1993, 2]] };
const journal = { title: 'A long title', 'container-title': 'The Journal' };

test.each<[Partial<Source>, string]>([
  [{ author: [one], issued }, 'Able 1993'],
  [{ author: [one, two], issued }, 'Able and Baker 1993'],
  [{ author: [one, two, three], issued }, 'Able et al. 1993'],
  [{ ...journal, author: [one] }, 'Able (year not seen)'],
  [{ ...journal, issued }, 'The Journal 1993'],
  [{ title: 'A long title', issued }, 'A long title 1993'],
])('%j', (known, text) => {
  expect(shortReference({ ...bare, ...known })).toBe(text);
});
