import { getCollection } from 'astro:content';
import { to } from '../paths.ts';
import { nearest } from './nearest.ts';
import { shortReference } from './reference.ts';
import type { Fact, Source } from './schema.ts';

/** Every source by its id. */
export async function allSources(): Promise<ReadonlyMap<string, Source>> {
  return new Map((await getCollection('sources')).map(({ id, data }) => [id, data]));
}

/** Every fact by its id. */
export async function allFacts(): Promise<ReadonlyMap<string, Fact>> {
  return new Map((await getCollection('facts')).map(({ id, data }) => [id, data]));
}

/**
 * A source by its id.
 *
 * @param where what asks, for the message
 * @throws Error where there is none
 */
export async function sourceOf(id: string, where: string): Promise<Source> {
  const sources = await allSources();
  const source = sources.get(id);
  if (source !== undefined) return source;
  const known = nearest(id, [...sources.keys()]).join(', ');
  throw new Error(`${where}: lessons/sources.json has no source “${id}”. Near to it: ${known}.`);
}

/** A fact by its id, as {@link sourceOf}. */
export async function factOf(id: string, where: string): Promise<Fact> {
  const facts = await allFacts();
  const fact = facts.get(id);
  if (fact !== undefined) return fact;
  const known = nearest(id, [...facts.keys()]).join(', ');
  throw new Error(`${where}: lessons/facts.yaml has no fact “${id}”. Near to it: ${known}.`);
}

/** A source as a link in a sentence. */
export async function citeOf(
  id: string,
  where: string,
): Promise<{ readonly href: string; readonly text: string; readonly howRead: string }> {
  const source = await sourceOf(id, where);
  return {
    href: entryAddress(id),
    text: shortReference(source),
    howRead: source.custom.howRead,
  };
}

/** Address of the entry of a source or a fact. */
export function entryAddress(id: string): string {
  return `${to('sources/')}#${id}`;
}
