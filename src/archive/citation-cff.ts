import { stringify } from 'yaml';
import type { Person } from '../trial/trial.ts';
import type { Citation } from './citation.ts';

/**
 * CITATION.cff of a data set, Citation File Format 1.2.0 (schema guide in the repository
 * citation-file-format/citation-file-format). Authors stand as entities with one `name`: where a name parts
 * into given and family names is not known, and a guess would cite people wrongly.
 */
export function citationCff({
  title,
  question,
  authors,
  address,
  doi,
  licence,
  crops,
  date,
  version,
}: Citation): string {
  return stringify({
    'cff-version': '1.2.0',
    message: 'If you use these data, please cite them as below.',
    type: 'dataset',
    title,
    abstract: question,
    authors: authors.map(entity),
    ...(date !== null && { 'date-released': date }),
    version,
    ...(doi !== null && { doi }),
    url: address,
    license: licence,
    keywords: crops,
  });
}

function entity({ name, orcid, url }: Person) {
  const bare = orcid?.replace(/^https?:\/\/orcid\.org\//, '');
  return { name, ...(bare && { orcid: `https://orcid.org/${bare}` }), ...(url && { website: url }) };
}
