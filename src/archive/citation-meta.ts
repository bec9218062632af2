import type { Citation } from './citation.ts';

/**
 * The citation as meta tags, name and content: Dublin Core terms for libraries, and the `citation_` names
 * (from Highwire Press) that reference managers and scholarly search engines read; both from memory.
 *
 * @param language of the page
 * @param pdf      address of the printable summary
 */
export function citationMeta(
  { title, question, authors, publisher, address, doi, licence, date }: Citation,
  language: string,
  pdf: string,
): readonly (readonly [name: string, content: string])[] {
  const tags: (readonly [string, string | null])[] = [
    ['DC.title', title],
    ...authors.map(({ name }) => ['DC.creator', name] as const),
    ['DC.description', question],
    ['DC.publisher', publisher],
    ['DC.date', date],
    ['DC.identifier', doi === null ? address : `https://doi.org/${doi}`],
    ['DC.language', language],
    ['DC.rights', licence],
    ['citation_title', title],
    ...authors.map(({ name }) => ['citation_author', name] as const),
    ['citation_publication_date', date?.replaceAll('-', '/') ?? null],
    ['citation_publisher', publisher],
    ['citation_doi', doi],
    ['citation_language', language],
    ['citation_public_url', address],
    ['citation_pdf_url', pdf],
  ];
  return tags.flatMap(([name, content]) => (content === null ? [] : [[name, content] as const]));
}
