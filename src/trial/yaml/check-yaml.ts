import type * as z from 'zod';
import type { FileProblems } from '../file-problems.ts';
import { issueRefusals } from '../schema/issue-refusals.ts';
import type { YamlFile } from './read-yaml.ts';

/** The file's contents as its schema describes them; every difference is reported, then null. */
export function checkYaml<Schema extends z.ZodType>(
  yaml: YamlFile,
  schema: Schema,
  report: FileProblems,
): z.infer<Schema> | null {
  const { data, error } = schema.safeParse(yaml.value, { reportInput: true });
  for (const issue of error?.issues ?? []) {
    for (const { path, refusal } of issueRefusals(issue, schema)) report.error(yaml.place(path), refusal);
  }
  return error ? null : (data ?? null);
}
