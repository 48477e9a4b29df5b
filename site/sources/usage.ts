import { getCollection } from 'astro:content';
import { materials, type Quantity } from '../../sims/mechanics/index.ts';
import { lessonNumber, to } from '../paths.ts';
import { idsIn } from './ids-in.ts';
import { allFacts } from './library.ts';

/** A page that shows a source or a fact. */
export interface Place {
  readonly href: string;
  readonly text: string;
}

const editions = ['study', 'lecture', 'clinic'] as const;
const editionName = { study: 'Study', lecture: 'Lecture', clinic: 'Clinic' } as const;

/** Ids of the sources a lesson's questions lean on. */
async function questionSources(lesson: string): Promise<readonly string[]> {
  const files = await getCollection('questions', ({ id }) => id === lesson);
  return files.flatMap(({ data }) => {
    const questions = (data as { questions: readonly { sources?: readonly string[] }[] }).questions;
    return questions.flatMap(({ sources = [] }) => sources);
  });
}

/** Ids of the sources and facts one page of a lesson shows; the sources of its facts are among them. */
async function idsOf(edition: (typeof editions)[number], lesson: string, body: string) {
  const facts = await allFacts();
  const { cites, facts: shown } = idsIn(body);
  const ofFacts = shown.flatMap((id) => facts.get(id)?.source ?? []);
  const ofQuestions = edition === 'study' ? await questionSources(lesson) : [];
  return { sources: new Set([...cites, ...ofFacts, ...ofQuestions]), facts: new Set(shown) };
}

/** Ids of the sources a study lesson rests on, those its front matter adds included. */
export async function lessonSources(lesson: string): Promise<ReadonlySet<string>> {
  const [entry] = await getCollection('study', ({ id }) => id === lesson);
  if (entry === undefined) return new Set();
  const { sources } = await idsOf('study', lesson, entry.body ?? '');
  return new Set([...sources, ...entry.data.sources]);
}

/** The pages on which each source and fact is used, by id. */
export async function usage(): Promise<ReadonlyMap<string, readonly Place[]>> {
  const places = new Map<string, Place[]>();
  for (const edition of editions) {
    for (const { id: lesson, body = '' } of await getCollection(edition)) {
      const place = {
        href: to(`${edition}/${lesson}/`),
        text: `${editionName[edition]} ${lessonNumber(lesson)}`,
      };
      const { sources, facts } = await idsOf(edition, lesson, body);
      const all = edition === 'study' ? await lessonSources(lesson) : sources;
      for (const id of [...all, ...facts]) places.set(id, [...(places.get(id) ?? []), place]);
    }
  }
  const table = { href: to('materials/'), text: 'Materials' };
  for (const id of materialSources()) places.set(id, [...(places.get(id) ?? []), table]);
  return places;
}

/** Ids of the sources that the table of materials rests on. */
function materialSources(): ReadonlySet<string> {
  const parts = Object.values(materials).flatMap(
    (material) => Object.values(material) as unknown[],
  );
  return new Set(
    parts.flatMap((part) => (typeof part === 'object' ? (part as Quantity).sources : [])),
  );
}
