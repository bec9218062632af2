import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stringify } from 'yaml';
import type { Analysis } from '../analysis/analysis.ts';
import type { Lot, Person, Trial } from '../trial/trial.ts';
import { analysisJson } from './analysis-json.ts';

export interface PublishedFile {
  /** Name under `/trials/<id>/data/`. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** SHA-256, hexadecimal. */
  readonly sha256: string;
}

/**
 * Every file that stands beside a published report: the raw files byte for byte, lots and people cut
 * down to the trial, and the analysis. Nothing else of the trial's folder is published.
 *
 * @param folder the trial's folder
 * @throws {Error} where a raw file is no longer the one that was analysed
 */
export async function publishedFiles(folder: string, trial: Trial, analysis: Analysis): Promise<PublishedFile[]> {
  const cut = ['lots.yaml', 'people.yaml'];
  const raw = trial.inputs.filter(({ file }) => !cut.includes(file));
  const files = await Promise.all(
    raw.map(async ({ file, sha256 }) => {
      const published = withDigest(file, await readFile(join(folder, file)));
      if (published.sha256 !== sha256)
        throw new Error(`${file} of ${trial.id} changed while the site was built; build again`);
      return published;
    }),
  );
  const made = {
    'lots.yaml': stringify(Object.fromEntries(trial.lots.map(lotYaml))),
    'people.yaml': stringify(Object.fromEntries(trial.authors.map(personYaml))),
    'analysis.json': analysisJson(analysis),
  };
  return [...files, ...Object.entries(made).map(([name, text]) => withDigest(name, new TextEncoder().encode(text)))];
}

function withDigest(name: string, bytes: Uint8Array): PublishedFile {
  return { name, bytes, sha256: createHash('sha256').update(bytes).digest('hex') };
}

const lotYaml = ({ id, seedsPerGram, ...lot }: Lot) => [id, given({ ...lot, seeds_per_gram: seedsPerGram })] as const;
const personYaml = ({ id, ...person }: Person) => [id, given(person)] as const;

/** Only what is known: a key that was not given is not written. */
function given(values: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null));
}
