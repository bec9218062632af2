import type { Person, Site, Trial } from '../trial/trial.ts';
import { packageResource, type PackagedFile } from './package-resource.ts';

/**
 * The descriptor of the data folder, datapackage.json, by the Data Package standard 2.0
 * (https://datapackage.org/standard/data-package/ and its pages on resources and table schemas, read in
 * the repository frictionlessdata/datapackage). Units stand in `fairsown:unit`, in the form that the standard
 * recommends for properties of one's own. Raw files are listed as plain files: they are as the growers typed them.
 *
 * @param address of the report
 */
export function dataPackage(trial: Trial, site: Site, address: string, files: readonly PackagedFile[]): string {
  const descriptor = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: trial.id.toLowerCase(),
    id: trial.doi === null ? address : `https://doi.org/${trial.doi}`,
    title: trial.title,
    description: trial.question,
    homepage: address,
    licenses: [{ name: trial.licence ?? site.licence }],
    contributors: trial.authors.map(contributor),
    keywords: [...new Set(trial.lots.flatMap(({ crop, species }) => [crop, species]))],
    resources: files.map(packageResource),
  };
  return `${JSON.stringify(descriptor, null, 2)}\n`;
}

function contributor({ name, affiliation, orcid, url }: Person) {
  const path = orcid === null ? url : `https://orcid.org/${orcid.replace(/^https?:\/\/orcid\.org\//, '')}`;
  return { title: name, ...(path && { path }), ...(affiliation && { organization: affiliation }), roles: ['creator'] };
}
