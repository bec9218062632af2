import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Pooled } from '../analysis/pooled.ts';
import { checksums } from '../archive/checksums.ts';
import { csvText } from '../archive/csv-text.ts';
import type { PackagedFile } from '../archive/package-resource.ts';
import { pooledTables } from '../archive/pooled-tables.ts';
import { questionPackage } from '../archive/question-package.ts';
import { zipOf } from '../archive/zip-of.ts';
import type { Question, Site } from '../trial/trial.ts';
import { analysisJson } from './analysis-json.ts';
import { madeFile } from './made-file.ts';

/** The script that recomputes a question in R, the same for all; seen from the folder in which everything runs. */
const R_SCRIPT = 'src/archive/pooled.R';

/**
 * Every file that stands beside the page of a question: the trials' differences as tables, the analysis, the R script that
 * finds it again, the package's descriptor, the checksums, and all of it as one zip. The same bytes at every build. Raw
 * records stand beside the reports of the trials.
 */
export async function questionFiles(question: Question, pooled: Pooled, site: Site): Promise<readonly PackagedFile[]> {
  const address = `${site.base.replace(/\/$/, '')}/questions/${question.id}/`;
  const files = [
    ...pooledTables(pooled).map((table) => {
      const head = table.columns.map(({ name }) => name);
      return madeFile(`${table.name}.csv`, csvText({ head, rows: table.rows }), table);
    }),
    madeFile('analysis.json', analysisJson(pooled)),
    madeFile('analysis.R', await readFile(resolve(R_SCRIPT))),
  ];
  files.push(madeFile('datapackage.json', questionPackage(question, pooled, site, address, files)));
  files.push(madeFile('SHA256SUMS', checksums(files)));
  return [...files, madeFile(`${question.id}.zip`, zipOf(question.id, files))];
}
