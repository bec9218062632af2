import type { FileProblems } from './file-problems.ts';
import { publishedFile } from './schema/published.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { MOST_BYTES_OF_SITE, readYaml } from './yaml/read-yaml.ts';

/** What of a trial was published. */
export interface PublishedState {
  readonly date: string;
  /** `inputsDigest` of the trial. */
  readonly digest: string;
  /** 1 as first published, one more for every entry under `changes`. */
  readonly version: number;
}

/** published.yaml: what was published, by trial. Null where there are errors. */
export function readRecord(bytes: Uint8Array, report: FileProblems): ReadonlyMap<string, PublishedState> | null {
  const yaml = readYaml(bytes, report, MOST_BYTES_OF_SITE);
  const checked = yaml && checkYaml(yaml, publishedFile, report);
  return checked ? new Map(Object.entries(checked)) : null;
}
