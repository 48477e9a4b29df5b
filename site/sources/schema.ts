import { z } from 'astro/zod';
import { howReadWords } from './provenance.ts';

const howRead = z.enum(howReadWords, {
  error: `howRead is one of: ${howReadWords.join(', ')}`,
});

const author = z.union([
  z.object({ family: z.string(), given: z.string().optional() }),
  z.object({ literal: z.string() }),
]);

/** A source as a CSL-JSON item; what is peculiar to the course stands under `custom`. */
export const sourceSchema = z.looseObject({
  id: z.string(),
  type: z.string(),
  title: z.string().optional(),
  author: z.array(author).default([]),
  issued: z.object({ 'date-parts': z.array(z.array(z.number()).min(1)).min(1) }).optional(),
  'container-title': z.string().optional(),
  volume: z.string().optional(),
  issue: z.string().optional(),
  page: z.string().optional(),
  number: z.string().optional(),
  publisher: z.string().optional(),
  DOI: z.string().optional(),
  PMID: z.string().optional(),
  PMCID: z.string().optional(),
  URL: z.url().optional(),
  custom: z.object({
    howRead,
    readNote: z.string(),
    /** What of the reference was not seen, or is from memory. */
    missing: z.array(z.string()),
    usedFor: z.enum(['numbers', 'method']),
  }),
});

/** A number the pages show: a value with its scatter, or a range. */
export const factSchema = z
  .object({
    id: z.string(),
    kind: z.enum(['published', 'common practice', 'teaching value']),
    value: z.number().optional(),
    sd: z.number().positive().optional(),
    low: z.number().optional(),
    high: z.number().optional(),
    n: z.number().int().positive().optional(),
    unit: z.string(),
    what: z.string(),
    source: z.string().optional(),
    howRead,
    note: z.string().optional(),
  })
  .refine(
    ({ value, low, high }) => value !== undefined || (low !== undefined && high !== undefined),
    {
      error: 'a fact has a value, or a low and a high',
    },
  )
  .refine(({ kind, source }) => (kind === 'published') === (source !== undefined), {
    error: 'a published fact names its source; another kind has none',
  });

export type Source = z.infer<typeof sourceSchema>;
export type Fact = z.infer<typeof factSchema>;
