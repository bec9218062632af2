import type * as z from 'zod';
import { WHOLE_FILE, type FileProblems } from './file-problems.ts';
import { trialFile } from './schema/trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml, type YamlFile } from './yaml/read-yaml.ts';

export type TrialFile = z.infer<typeof trialFile>;

export interface TrialYaml {
  readonly yaml: YamlFile;
  /** All of it; null where a key is missing or wrong. */
  readonly whole: TrialFile | null;
  /** Those keys that are right, so that the tables can be checked in spite of a slip elsewhere. */
  readonly given: Partial<TrialFile>;
}

/** trial.yaml, key by key. Null where it is missing or cannot be read at all. */
export function readTrialYaml(bytes: Uint8Array | undefined, report: FileProblems): TrialYaml | null {
  if (!bytes) {
    report.error(WHOLE_FILE, {
      rule: 'trial-yaml-missing',
      message: 'there is no trial.yaml, which says what was asked and done',
      remedy: 'Create it with the keys title, question, status, authors, sown, lots and treatments.',
    });
    return null;
  }
  const yaml = readYaml(bytes, report);
  if (!yaml) return null;

  const whole = checkYaml(yaml, trialFile, report);
  return { yaml, whole, given: whole ?? rightKeys(yaml.value) };
}

function rightKeys(value: unknown): Partial<TrialFile> {
  if (typeof value !== 'object' || value === null) return {};
  const entries = Object.entries(trialFile.shape).flatMap(([key, schema]) => {
    const { success, data } = schema.safeParse((value as Record<string, unknown>)[key]);
    return success ? [[key, data]] : [];
  });
  return Object.fromEntries(entries);
}
