import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { packed, unpacked } from './packed-files.ts';
import { publishedFiles, type PublishedFile } from './published-files.ts';
import { trialFolder } from './trial-folder.ts';

/** Trials whose files are held at once: as many as are being written. */
const HELD = 8;
const held = new Map<Trial, Promise<readonly PublishedFile[]>>();

/**
 * `publishedFiles` of a trial as it was read, for its page and for its data folder: as an earlier build made them, or
 * made now. A trial that is read again is another.
 */
export function keptFiles(trial: Trial, analysis: Analysis, site: Site): Promise<readonly PublishedFile[]> {
  const files = held.get(trial) ?? filesOf(trial, analysis, site);
  held.delete(trial);
  held.set(trial, files);
  for (const longest of [...held.keys()].slice(0, -HELD)) held.delete(longest);
  return files;
}

async function filesOf(trial: Trial, analysis: Analysis, site: Site): Promise<readonly PublishedFile[]> {
  const inputs = [trial, analysis, site].map(digestOf).join(' ');
  const make = async () => packed(await publishedFiles(trialFolder(trial.id), trial, analysis, site));
  return unpacked(await buildKeeper().bytes('files', inputs, make));
}
