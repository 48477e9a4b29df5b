import { parse } from 'yaml';
import text from './facts.yaml?raw';

interface Fact {
  readonly id: string;
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
  readonly sd?: number;
  /** How many were measured. */
  readonly n?: number;
  /** Id of its source. */
  readonly source?: string;
  readonly howRead: string;
}

const facts = new Map((parse(text) as readonly Fact[]).map((fact) => [fact.id, fact]));

/**
 * The single figure of a published number, or its standard deviation, to compute with.
 *
 * @throws RangeError for an id that is not in facts.yaml, or an entry without that figure
 */
export function factValue(id: string, field: 'value' | 'sd' = 'value'): number {
  const value = facts.get(id)?.[field];
  if (value === undefined) throw new RangeError(`id is ${id}; allowed: a fact with a ${field}`);
  return value;
}

/**
 * The range of a published number, to draw.
 *
 * @throws RangeError for an id that is not in facts.yaml, or an entry without a range
 */
export function factRange(id: string): readonly [low: number, high: number] {
  const { low, high } = facts.get(id) ?? {};
  if (low === undefined || high === undefined) {
    throw new RangeError(`id is ${id}; allowed: a fact with a range`);
  }
  return [low, high];
}

/**
 * A published number with how it was read, from how many and by whom.
 *
 * @throws RangeError for an id that is not in facts.yaml
 */
export function factEntry(id: string): Fact {
  const fact = facts.get(id);
  if (fact === undefined) throw new RangeError(`id is ${id}; allowed: a fact of facts.yaml`);
  return fact;
}
