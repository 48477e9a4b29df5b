import type { Source } from './schema.ts';

type Author = Source['author'][number];

/** "Lippitt et al. 1993": what stands in a sentence. */
export function shortReference(source: Source): string {
  return `${whoOf(source)} ${yearOf(source) ?? '(year not seen)'}`;
}

function whoOf({ author, custom, PMCID, title, 'container-title': journal }: Source): string {
  const [first, second, third] = author;
  if (first === undefined) return PMCID ?? journal ?? title ?? 'Untitled';
  const areMoreUnseen = custom.missing.includes('co-authors');
  if (third !== undefined || areMoreUnseen || (second && 'literal' in second)) {
    return `${familyOf(first)} et al.`;
  }
  return second ? `${familyOf(first)} and ${familyOf(second)}` : familyOf(first);
}

function familyOf(author: Author): string {
  return 'literal' in author ? author.literal : author.family;
}

/** Year of issue; undefined where it was not seen. */
export function yearOf({ issued }: Source): number | undefined {
  return issued?.['date-parts'][0]?.[0];
}

/** "Lippitt SB, Vanderhooft JE": initials after the name, no stops. */
export function authorsText({ author }: Source): string {
  if (author.length === 0) return 'Authors not seen';
  return author
    .map((person) => {
      if ('literal' in person) return person.literal;
      const initials = (person.given ?? '')
        .split(/[\s.-]+/)
        .map((part) => part.charAt(0))
        .join('');
      return `${person.family} ${initials}`.trim();
    })
    .join(', ');
}

/** The title as a sentence, with its stop. */
export function titleText({ title }: Source): string {
  if (title === undefined) return 'Title not seen.';
  return /[.?!]$/.test(title) ? title : `${title}.`;
}

/** "2:27–35": what follows the name of a journal; '' where nothing of it was seen. */
export function placeText({ volume, issue, page, number, publisher }: Source): string {
  const inJournal = [volume, issue === undefined ? '' : `(${issue})`].join('');
  const pages = page === undefined ? '' : `${inJournal === '' ? '' : ':'}${page}`;
  return [`${inJournal}${pages}`, number, publisher].filter(Boolean).join(', ');
}

/** Where the text can be found on the web: a stable identifier before an address. */
export function linkOf({
  DOI,
  PMID,
  PMCID,
  URL: address,
}: Source): { href: string; text: string } | undefined {
  if (DOI !== undefined) return { href: `https://doi.org/${DOI}`, text: `doi:${DOI}` };
  if (PMID !== undefined) {
    return { href: `https://pubmed.ncbi.nlm.nih.gov/${PMID}/`, text: `PubMed ${PMID}` };
  }
  if (PMCID !== undefined) {
    return { href: `https://pmc.ncbi.nlm.nih.gov/articles/${PMCID}/`, text: PMCID };
  }
  return address === undefined ? undefined : { href: address, text: new URL(address).hostname };
}
