import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { publishedFiles, type PublishedFile } from './published-files.ts';
import { trialFolder } from './trial-folder.ts';

const kept = new WeakMap<Trial, Promise<readonly PublishedFile[]>>();

/** `publishedFiles` of a trial as it was read: made once, for its page and for its data folder. A trial that is read again is another. */
export function keptFiles(trial: Trial, analysis: Analysis, site: Site): Promise<readonly PublishedFile[]> {
  const known = kept.get(trial);
  if (known) return known;
  const files = publishedFiles(trialFolder(trial.id), trial, analysis, site);
  kept.set(trial, files);
  return files;
}
