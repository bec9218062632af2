import type { FileProblems } from './file-problems.ts';
import { peopleFile } from './schema/people.ts';
import type { Person } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml, type YamlFile } from './yaml/read-yaml.ts';

/** people.yaml, of the site or of one trial: people by id. Null where there are errors; `most` bytes as `readYaml` takes them. */
export function readPeople(
  bytes: Uint8Array,
  report: FileProblems,
  most?: number,
): { readonly people: ReadonlyMap<string, Person>; readonly yaml: YamlFile } | null {
  const yaml = readYaml(bytes, report, most);
  const checked = yaml && checkYaml(yaml, peopleFile, report);
  if (!yaml || !checked) return null;
  const people = Object.entries(checked).map(([id, person]): [string, Person] => [
    id,
    {
      id,
      name: person.name,
      affiliation: person.affiliation ?? null,
      orcid: person.orcid ?? null,
      url: person.url ?? null,
    },
  ]);
  return { people: new Map(people), yaml };
}
