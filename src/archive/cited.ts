import { Cite } from '@citation-js/core';
import '@citation-js/plugin-csl';
import type { Citation } from './citation.ts';

/**
 * A citation in the library that writes its forms. Names are kept whole: where one parts into given and family names is
 * not known, and a guess would cite people wrongly.
 *
 * @param more CSL variables of one form alone
 */
export function cited(
  { id, title, question, authors, publisher, address, doi, date, version }: Citation,
  more: Readonly<Record<string, string>> = {},
): Cite {
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
    ...more,
  };
  return new Cite([item]);
}
