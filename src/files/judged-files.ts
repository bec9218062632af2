import { createHash } from 'node:crypto';
import type { Problem } from '../trial/problem.ts';
import type { ReadSite } from '../trial/read-site.ts';
import { readTrial } from '../trial/read-trial.ts';
import type { Trial } from '../trial/trial.ts';
import { buildKeeper, isBuilding } from './kept/build-keeper.ts';
import { digestOf } from './kept/digest-of.ts';
import { checkTexts } from './prose/check-texts.ts';

/** What stands in the files of one trial. */
interface Judged {
  readonly trial: Trial | null;
  /** Of the records. */
  readonly found: readonly Problem[];
  /** Of the author's own words. */
  readonly words: readonly Problem[];
}

/** The files of a trial's folder, by name, and what the site files say. */
interface Given extends Pick<ReadSite, 'site' | 'unsure'> {
  readonly id: string;
  readonly folder: string;
  readonly files: ReadonlyMap<string, Uint8Array>;
}

/** `readTrial` and `checkTexts` of a trial's files; while a site is built, as an earlier build found them in the same bytes. */
export async function judgedFiles(given: Given): Promise<Judged> {
  if (!isBuilding()) return judge(given);
  const { id, folder, files, site, unsure } = given;
  const contents = [...files].map(([name, bytes]) => [name, createHash('sha256').update(bytes).digest('hex')]);
  const inputs = JSON.stringify([id, folder, digestOf(site), [...unsure], contents]);
  return JSON.parse(await buildKeeper().text('reading', inputs, async () => JSON.stringify(judge(given))));
}

function judge(given: Given): Judged {
  const { trial, problems } = readTrial(given);
  return { trial, found: problems, words: checkTexts(given.files, given.folder, trial, given.site.language) };
}
