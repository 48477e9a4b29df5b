import { parse } from 'yaml';
import text from './facts.yaml?raw';

interface Fact {
  readonly id: string;
  readonly value?: number;
}

const facts = new Map((parse(text) as readonly Fact[]).map((fact) => [fact.id, fact]));

/**
 * The single figure of a published number, to compute with.
 *
 * @throws RangeError for an id that is not in facts.yaml, or an entry without a single value
 */
export function factValue(id: string): number {
  const value = facts.get(id)?.value;
  if (value === undefined) throw new RangeError(`id is ${id}; allowed: a fact with a value`);
  return value;
}
