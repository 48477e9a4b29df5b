import { factEntry } from './fact-value.ts';
import sources from './sources.json' with { type: 'json' };

interface Source {
  readonly id: string;
  readonly author?: readonly { readonly family?: string }[];
  readonly issued?: { readonly 'date-parts': readonly (readonly number[])[] };
}

/**
 * Who published a number, short enough to stand in a drawing: first author and year, "Schoch 2019".
 *
 * @throws RangeError for an id that is not in facts.yaml
 */
export function sourceName(factId: string): string {
  const { source } = factEntry(factId);
  const found = (sources as readonly Source[]).find(({ id }) => id === source);
  const year = found?.issued?.['date-parts'][0]?.[0];
  return `${found?.author?.[0]?.family ?? 'Authors not seen'} ${year ?? ''}`.trim();
}
