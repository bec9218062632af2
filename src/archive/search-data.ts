import type { Citation } from './citation.ts';

export interface SearchPage {
  /** 50 to 5000 characters. */
  readonly description: string;
  readonly language: string;
  /** The trial has results, so that its page is an article and not a plan. */
  readonly isArticle: boolean;
  /** Outcomes compared, in words. */
  readonly measured: readonly string[];
  readonly sown: string | null;
  readonly finished: string | null;
  /** The zip of all files, its address and its size. */
  readonly zip: string;
}

/**
 * What search engines read of a report: schema.org `Dataset`, and `ScholarlyArticle` once there are results, as
 * JSON-LD for a data block. No `<` is left in it, so that no label can end the block.
 *
 * Source of what is required: schema.org; Google's structured data for data sets (`name`, `description` of 50 to
 * 5000 characters; recommended: licence, creator, distribution, variables, time), from memory.
 */
export function searchData(cited: Citation, page: SearchPage): string {
  const graph = page.isArticle ? [dataset(cited, page), article(cited, page)] : [dataset(cited, page)];
  return JSON.stringify({ '@context': 'https://schema.org', '@graph': graph }).replaceAll('<', '\\u003c');
}

function dataset(cited: Citation, { description, measured, sown, finished, zip }: SearchPage) {
  return {
    '@type': 'Dataset',
    '@id': `${cited.address}#data`,
    name: cited.title,
    description,
    ...shared(cited),
    isAccessibleForFree: true,
    ...(measured.length > 0 && { variableMeasured: measured }),
    ...(sown !== null && { temporalCoverage: `${sown}/${finished ?? '..'}` }),
    distribution: [{ '@type': 'DataDownload', encodingFormat: 'application/zip', contentUrl: zip }],
  };
}

function article(cited: Citation, { description, language }: SearchPage) {
  return {
    '@type': 'ScholarlyArticle',
    '@id': `${cited.address}#report`,
    headline: cited.title,
    name: cited.title,
    abstract: description,
    author: cited.authors.map(person),
    inLanguage: language,
    mainEntityOfPage: cited.address,
    isBasedOn: { '@id': `${cited.address}#data` },
    ...shared(cited),
  };
}

function shared({ authors, publisher, address, doi, licence, crops, date, version }: Citation) {
  return {
    url: address,
    ...(doi !== null && { identifier: `https://doi.org/${doi}` }),
    creator: authors.map(person),
    publisher: { '@type': 'Organization', name: publisher },
    license: `https://spdx.org/licenses/${licence}`,
    keywords: crops,
    version,
    // The day from which this version stands, not that of the first publication, which is not on record.
    ...(date !== null && { dateModified: date }),
  };
}

function person({ name, affiliation, orcid, url }: Citation['authors'][number]) {
  const id = orcid === null ? url : `https://orcid.org/${orcid.replace(/^https?:\/\/orcid\.org\//, '')}`;
  return {
    '@type': 'Person',
    name,
    ...(id && { url: id }),
    ...(affiliation && { affiliation: { '@type': 'Organization', name: affiliation } }),
  };
}
