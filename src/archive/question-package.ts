import type { Pooled } from '../analysis/pooled.ts';
import type { Question, Site } from '../trial/trial.ts';
import { packageResource, type PackagedFile } from './package-resource.ts';

/**
 * The descriptor of a question's data folder, datapackage.json (see dataPackage). Contributors are the growers of the
 * trials that count; what they published elsewhere is named as a source.
 *
 * @param address of the question's page
 */
export function questionPackage(
  question: Question,
  pooled: Pooled,
  site: Site,
  address: string,
  files: readonly PackagedFile[],
): string {
  const growers = [...new Set(pooled.trials.flatMap((trial) => trial.growers))];
  const sources = pooled.trials.flatMap(({ title, from }) => (from === null ? [] : [{ title, path: from }]));
  const descriptor = {
    $schema: 'https://datapackage.org/profiles/2.0/datapackage.json',
    name: question.id.toLowerCase(),
    id: address,
    title: question.title,
    description: question.question,
    homepage: address,
    licenses: [{ name: site.licence }],
    contributors: growers.map((title) => ({ title, roles: ['creator'] })),
    ...(sources.length > 0 && { sources }),
    resources: files.map(packageResource),
  };
  return `${JSON.stringify(descriptor, null, 2)}\n`;
}
