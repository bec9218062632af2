// What the thread of read-analysed.ts runs.
import { parentPort, workerData } from 'node:worker_threads';
import { toldTrial } from '../archive/told-trial.ts';
import { DataError } from '../trial/data-error.ts';
import type { Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { analysedTrial, type AnalysedTrial } from './analysed-trial.ts';
import { projectKeeper } from './kept/build-keeper.ts';
import { pooledQuestions } from './pooled-questions.ts';
import type { Answer } from './read-analysed.ts';
import { readPublishable } from './read-publishable.ts';

parentPort?.postMessage(await answer(String(workerData)));

/** As it was worked out from the same trial before, or now: the file that keeps it. */
function analysedOf(trial: Trial, language: string): Promise<string> {
  return projectKeeper().file('trial', JSON.stringify([language, trial]), async () =>
    JSON.stringify({ trial, analysis: publishedAnalysis(trial, language) } satisfies AnalysedTrial),
  );
}

async function answer(folder: string): Promise<Answer> {
  try {
    const { site, trials, repeats, leftOut } = await readPublishable(folder);
    // No page, feed or file starts from anything but what may be told.
    const analysed: { id: string; file: string }[] = [];
    for (const trial of trials) {
      analysed.push({ id: trial.id, file: await analysedOf(toldTrial(trial), site.language) });
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
