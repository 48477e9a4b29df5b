import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { parse } from 'yaml';

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
  text: z.string(),
  /** Title of a residency milestone sub-competency. */
  milestone: z.string(),
});

export const collections = {
  study: defineCollection({
    loader: glob({ base, pattern: '*/study.mdx', generateId: folder }),
    schema: edition.extend({ objectives: z.array(objective).min(2), sources: z.array(z.string()) }),
  }),
  lecture: defineCollection({
    loader: glob({ base, pattern: '*/lecture.mdx', generateId: folder }),
    schema: edition,
  }),
  clinic: defineCollection({
    loader: glob({ base, pattern: '*/clinic.mdx', generateId: folder }),
    schema: edition,
  }),
  sources: defineCollection({ loader: file(`${base}/sources.json`), schema: z.looseObject({}) }),
  facts: defineCollection({
    loader: file(`${base}/facts.yaml`, { parser: (text) => parse(text) }),
    schema: z.looseObject({}),
  }),
};
