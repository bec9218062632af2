// What the thread of content-reader.ts runs: it answers each message with a reading.
import { existsSync } from 'node:fs';
import { parentPort, workerData } from 'node:worker_threads';
import { analyse } from '../analysis/analyse.ts';
import { DataError } from '../trial/data-error.ts';
import type { Trial } from '../trial/trial.ts';
import { analysedTrial } from './analysed-trial.ts';
import { keptAnalysis } from './kept-analysis.ts';
import { pooledQuestions } from './pooled-questions.ts';
import { knownRepeats } from './known-repeats.ts';
import type { Answer, ReadTrial } from './content-reader.ts';
import { readPublishable } from './read-publishable.ts';
import { trialMemory } from './trial-memory.ts';

const memory = trialMemory();
const analysedIn = new WeakMap<Trial, { readonly language: string; readonly file: string }>();

parentPort?.on('message', async () => parentPort?.postMessage(await answer(String(workerData))));

/** Where it is kept; while `dev` runs, a trial in whose folder nothing changed is where it was. */
async function analysedOf(trial: Trial, language: string): Promise<string> {
  const known = analysedIn.get(trial);
  if (known?.language === language && existsSync(known.file)) return known.file;
  const file = await keptAnalysis(trial, language, analyse);
  analysedIn.set(trial, { language, file });
  return file;
}

async function answer(folder: string): Promise<Answer> {
  try {
    const { site, trials, analysed: known, repeats, leftOut } = await readPublishable(folder, memory);
    const repeatsOf = knownRepeats(trials, site);
    const analysed: ReadTrial[] = [];
    for (const trial of trials) {
      const file = known.get(trial.id) ?? (await analysedOf(trial, site.language));
      analysed.push({ id: trial.id, file, repeats: repeatsOf(trial) });
    }
    const answering = new Set(
      Object.values(site.questions).flatMap((question) => question.trials.map(({ trial }) => trial)),
    );
    const answers = analysed.filter(({ id }) => answering.has(id)).map(({ id, file }) => analysedTrial(id, file));
    return { site, leftOut, trials: analysed, questions: pooledQuestions(site, answers, repeats) };
  } catch (error) {
    if (error instanceof DataError) return { problems: error.problems };
    throw error;
  }
}
