import { createHash } from 'node:crypto';
import { relative } from 'node:path';
import { analyse } from '../analysis/analyse.ts';
import { onceATrial } from '../analysis/once-a-trial.ts';
import type { Problem } from '../trial/problem.ts';
import type { ReadSite } from '../trial/read-site.ts';
import { readTrial } from '../trial/read-trial.ts';
import type { Trial } from '../trial/trial.ts';
import { buildKeeper, isBuilding } from './kept/build-keeper.ts';
import { keptAnalysis } from './kept-analysis.ts';
import { digestOf } from './kept/digest-of.ts';
import { readKept } from './kept/read-kept.ts';
import { checkTexts } from './prose/check-texts.ts';

/** What stands in the files of one trial. */
interface Judged {
  readonly trial: Trial | null;
  /** Of the records. */
  readonly found: readonly Problem[];
  /** Of the author's own words. */
  readonly words: readonly Problem[];
  /** File that keeps the trial analysed (`keptAnalysis`); null without a trial, where no site is built, and where nothing can be kept. */
  readonly analysed: string | null;
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
  const analysis = onceATrial(analyse); // of which texts and pages tell
  const withAnalysis = async (judged: Judged): Promise<Judged> => {
    if (judged.trial === null) return judged;
    const file = await keptAnalysis(judged.trial, site.language, analysis).catch(() => null);
    return { ...judged, analysed: file && relative('.', file) }; // the project may be moved
  };
  const make = () => withAnalysis(judge(given, analysis));
  const kept = await buildKeeper().text('reading', inputs, async () => JSON.stringify(await make()));
  const judged: Judged = JSON.parse(kept);
  return readKept(judged.analysed ?? '') ? judged : withAnalysis(judged);
}

function judge(given: Given, analysis = onceATrial(analyse)): Judged {
  const { trial, problems } = readTrial(given);
  const words = checkTexts(given.files, given.folder, trial, given.site.language, analysis);
  return { trial, found: problems, words, analysed: null };
}
