import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { keptFiles } from './kept-files.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import type { PublishedFile } from './published-files.ts';

export interface ListedFile extends Pick<PublishedFile, 'name' | 'sha256'> {}

/** The files of `keptFiles` by name and digest, without what stands in them. */
export async function listedFiles(trial: Trial, analysis: Analysis, site: Site): Promise<readonly ListedFile[]> {
  const inputs = [trial, analysis, site].map(digestOf).join(' ');
  const list = await buildKeeper().text('list', inputs, async () => {
    const files = await keptFiles(trial, analysis, site);
    return JSON.stringify(files.map(({ name, sha256 }) => ({ name, sha256 })));
  });
  return JSON.parse(list);
}
