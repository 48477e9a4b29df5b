/** How a number or a paper came to be known here: the word beside it, and what the word means. */
export const provenance = {
  read: 'The whole text was read.',
  abstract: 'The abstract was read, not the paper.',
  excerpt: 'A part of the text was read: a table, a page.',
  quoted: 'It was seen only where another text quotes it.',
  'from memory': 'Nothing was open while it was written down. It needs to be verified.',
  'common practice': 'The trade says so. No source was found.',
  'teaching value': 'Chosen for teaching, near what is known. It proves nothing.',
} as const;

export type HowRead = keyof typeof provenance;
export const howReadWords = Object.keys(provenance) as readonly HowRead[];
