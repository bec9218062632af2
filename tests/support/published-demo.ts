import { join } from 'node:path';
import type { Analysis } from '../../src/analysis/analysis.ts';
import { publishedFiles, type PublishedFile } from '../../src/files/published-files.ts';
import { readContent } from '../../src/files/read-content.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';

const content = join(import.meta.dirname, '..', '..', 'content');

export interface PublishedTrial {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly files: readonly PublishedFile[];
  /** Text of a file by its name. */
  text(name: string): string;
}

/** Every demonstration trial with its data folder as the site publishes it. */
export async function publishedDemo(): Promise<readonly PublishedTrial[]> {
  const { site, trials } = await readContent(content);
  return Promise.all(
    trials.map(async ({ id, trial }) => {
      if (!trial) throw new Error(`${id} has errors`);
      const analysis = publishedAnalysis(trial, site.language);
      const files = await publishedFiles(join(content, 'trials', id), trial, analysis, site);
      const text = (name: string) => Buffer.from(files.find((file) => file.name === name)?.bytes ?? []).toString();
      return { trial, analysis, files, text };
    }),
  );
}
