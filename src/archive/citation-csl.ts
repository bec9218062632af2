import type { Citation } from './citation.ts';

/** The citation as CSL-JSON (Citation Style Language 1.0.2), which reference managers read; names are kept whole. */
export function citationCsl({
  id,
  title,
  question,
  authors,
  publisher,
  address,
  doi,
  date,
  version,
}: Citation): string {
  const item = {
    id,
    type: 'dataset',
    title,
    author: authors.map(({ name }) => ({ literal: name })),
    ...(date !== null && { issued: { 'date-parts': [date.split('-').map(Number)] } }),
    publisher,
    version,
    ...(doi !== null && { DOI: doi }),
    URL: address,
    abstract: question,
  };
  return `${JSON.stringify([item], null, 2)}\n`;
}
