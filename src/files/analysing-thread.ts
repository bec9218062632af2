// What the thread of read-analysed.ts runs.
import { parentPort, workerData } from 'node:worker_threads';
import type { Analysis } from '../analysis/analysis.ts';
import { toldTrial } from '../archive/told-trial.ts';
import { DataError } from '../trial/data-error.ts';
import type { Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { buildKeeper } from './kept/build-keeper.ts';
import { pooledQuestions } from './pooled-questions.ts';
import type { Answer } from './read-analysed.ts';
import { readPublishable } from './read-publishable.ts';

parentPort?.postMessage(await answer(String(workerData)));

/** As it was worked out from the same trial before, or now. */
async function analysedOf(trial: Trial, language: string): Promise<{ trial: Trial; analysis: Analysis }> {
  const text = await buildKeeper().text('analysis', JSON.stringify([language, trial]), async () =>
    JSON.stringify(publishedAnalysis(trial, language)),
  );
  return { trial, analysis: JSON.parse(text) };
}

async function answer(folder: string): Promise<Answer> {
  try {
    const { site, trials, repeats, leftOut } = await readPublishable(folder);
    // No page, feed or file starts from anything but what may be told.
    const analysed = await Promise.all(trials.map((trial) => analysedOf(toldTrial(trial), site.language)));
    return { site, leftOut, trials: analysed, questions: pooledQuestions(site, analysed, repeats) };
  } catch (error) {
    if (error instanceof DataError) return { problems: error.problems };
    throw error;
  }
}
