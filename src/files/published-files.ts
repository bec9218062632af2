import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { stringify } from 'yaml';
import type { Analysis } from '../analysis/analysis.ts';
import { citation } from '../archive/citation.ts';
import { citationBib } from '../archive/citation-bib.ts';
import { citationCff } from '../archive/citation-cff.ts';
import { citationCsl } from '../archive/citation-csl.ts';
import { checksums } from '../archive/checksums.ts';
import { csvText } from '../archive/csv-text.ts';
import { dataPackage } from '../archive/data-package.ts';
import { given } from '../archive/given.ts';
import { miappe } from '../archive/miappe.ts';
import type { Table } from '../archive/table.ts';
import { tablesOf } from '../archive/tables-of.ts';
import { toldTrial } from '../archive/told-trial.ts';
import { zipOf } from '../archive/zip-of.ts';
import type { Lot, Person, Site, Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { analysisJson } from './analysis-json.ts';
import { keptRepeatKit } from './kept-repeat-kit.ts';
import { madeFile } from './made-file.ts';
import { peopleNamed } from './people-named.ts';

/** The script that recomputes a trial in R, the same for all trials; seen from the folder in which everything runs. */
const R_SCRIPT = 'src/archive/analysis.R';

export interface PublishedFile {
  /** Name under `/trials/<id>/data/`. */
  readonly name: string;
  readonly bytes: Uint8Array;
  /** SHA-256, hexadecimal. */
  readonly sha256: string;
  /** Byte for byte as the author's folder holds it, or made from that. */
  readonly kind: 'raw' | 'made';
  /** The table in a file that was made as one. */
  readonly table: Table | null;
}

/**
 * Every file that stands beside a published report: the raw files byte for byte, lots and people cut
 * down to the trial, the analysis, tidy tables with their dictionary, the package's descriptor, the
 * checksums, and all of it as one zip. Nothing else of the trial's folder is published, and nothing that
 * tells the treatments of a blind trial before its last count. The same bytes at every build.
 *
 * @param folder the trial's folder
 * @throws {Error} where a raw file is no longer the one that was analysed
 */
export async function publishedFiles(
  folder: string,
  trial: Trial,
  analysis: Analysis,
  site: Site,
): Promise<PublishedFile[]> {
  const told = toldTrial(trial);
  const address = `${site.base.replace(/\/$/, '')}/trials/${trial.id}/`;
  const cited = citation(trial, site, address);
  const tables = tablesOf(told);
  const long = tables.filter(({ name }) => name.endsWith('-long.csv')).map(({ name, table: { title } }) => ({ name, title })); // prettier-ignore
  const checklist = miappe(told, analysis, site, address, long);
  const files = [
    ...(await rawFiles(folder, told)),
    made('lots.yaml', stringify(Object.fromEntries(trial.lots.map(lotYaml)))),
    made('people.yaml', stringify(Object.fromEntries((await peopleNamed(folder, trial, site)).map(personYaml)))),
    ...tables.map(({ name, text, table }) => made(name, text, table)),
    made('miappe.csv', csvText({ head: checklist.columns.map(({ name }) => name), rows: checklist.rows }), checklist),
    made('analysis.R', await readFile(resolve(R_SCRIPT))),
    made('analysis.json', analysisJson(told === trial ? analysis : publishedAnalysis(told, site.language))),
    made('CITATION.cff', citationCff(cited)),
    made('citation.bib', citationBib(cited)),
    made('citation.csl.json', citationCsl(cited)),
  ];
  const kit = await keptRepeatKit({ trial: told, address, site });
  if (kit) files.push(made(`repeat-${trial.id}.zip`, kit));
  files.push(made('datapackage.json', dataPackage(trial, site, address, files)));
  files.push(made('SHA256SUMS', checksums(files)));
  return [...files, made(`${trial.id}.zip`, zipOf(trial.id, files))];
}

function rawFiles(folder: string, trial: Trial): Promise<PublishedFile[]> {
  const cut = ['lots.yaml', 'people.yaml'];
  const raw = trial.inputs.filter(({ file }) => !cut.includes(file));
  return Promise.all(
    raw.map(async ({ file, sha256 }) => {
      const published = { ...made(file, await readFile(join(folder, file))), kind: 'raw' as const };
      if (published.sha256 !== sha256)
        throw new Error(`${file} of ${trial.id} changed while the site was built; build again`);
      return published;
    }),
  );
}

const made = (name: string, content: string | Uint8Array, table: Table | null = null): PublishedFile => ({
  ...madeFile(name, content, table),
  kind: 'made',
});

const lotYaml = ({ id, seedsPerGram, ...lot }: Lot) => [id, given({ ...lot, seeds_per_gram: seedsPerGram })] as const;
const personYaml = ({ id, ...person }: Person) => [id, given(person)] as const;
