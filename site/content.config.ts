import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { readQuestionFile } from '../sims/study/question-file.ts';
import { factSchema, sourceSchema } from './sources/schema.ts';

const base = './lessons';

/** The folder of a lesson is its name in every address: `01-ball-and-cup/study.mdx` → `01-ball-and-cup`. */
const folder = ({ entry }: { entry: string }): string => entry.split('/')[0] ?? entry;

/** What every edition of a lesson says of itself. */
const edition = z.object({
  title: z.string(),
  idea: z.string(),
  minutes: z.number().positive(),
});

const objective = z.object({
  /** Short name the questions use: o1, o2 … */
  id: z
    .string()
    .regex(/^[a-z][a-z0-9-]*$/, 'an objective’s id is lower-case letters, digits and hyphens'),
  text: z.string(),
  /** Title of a residency milestone sub-competency. */
  milestone: z.string(),
});

export const collections = {
  study: defineCollection({
    loader: glob({ base, pattern: '*/study.mdx', generateId: folder }),
    schema: edition.extend({
      objectives: z.array(objective).min(2),
      /** Sources beyond those that its text, numbers and questions name. */
      sources: z.array(z.string()).default([]),
    }),
  }),
  lecture: defineCollection({
    loader: glob({ base, pattern: '*/lecture.mdx', generateId: folder }),
    schema: edition,
  }),
  clinic: defineCollection({
    loader: glob({ base, pattern: '*/clinic.mdx', generateId: folder }),
    schema: edition.extend({
      /** Day the text was last changed, as it stands on the printed sheet. */
      written: z.coerce.date(),
      /** For staff: what its bench computes, and which of its statements are worked out where. */
      behind: z.string(),
      /** For the last card and the sheet. */
      questions: z.array(z.string()).min(3),
    }),
  }),
  questions: defineCollection({
    loader: glob({ base, pattern: '*/questions.yaml', generateId: folder }),
    schema: z.looseObject({}).superRefine((data, context) => {
      for (const message of readQuestionFile(data).problems) {
        context.addIssue({ code: 'custom', message });
      }
    }),
  }),
  sources: defineCollection({ loader: file(`${base}/sources.json`), schema: sourceSchema }),
  facts: defineCollection({
    loader: file(`${base}/facts.yaml`, {
      parser: (text) => parse(text) as Record<string, unknown>[],
    }),
    schema: factSchema,
  }),
};
