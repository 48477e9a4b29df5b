import { getCollection } from 'astro:content';
import { parse } from 'yaml';
import outlineText from '../lessons/outline.yaml?raw';
import { z } from 'astro/zod';

const outline = z
  .array(z.object({ id: z.string(), title: z.string(), idea: z.string() }))
  .parse(parse(outlineText));

/** A lesson of the course as a list shows it. */
export interface ListedLesson {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly idea: string;
  /** Minutes of the edition; null while it is being written. */
  readonly minutes: number | null;
}

/** Every lesson of the course in order, with what one edition has of it. */
export async function lessonsOf(
  edition: 'study' | 'lecture' | 'clinic',
): Promise<readonly ListedLesson[]> {
  const entries = await getCollection(edition);
  return outline.map(({ id, title, idea }) => {
    const entry = entries.find((candidate) => candidate.id === id);
    return {
      id,
      number: Number.parseInt(id, 10),
      title: entry?.data.title ?? title,
      idea: entry?.data.idea ?? idea,
      minutes: entry?.data.minutes ?? null,
    };
  });
}
