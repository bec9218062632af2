// What the thread of read-analysed.ts runs.
import { parentPort, workerData } from 'node:worker_threads';
import { DataError } from '../trial/data-error.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { pooledQuestions } from './pooled-questions.ts';
import type { Answer } from './read-analysed.ts';
import { readPublishable } from './read-publishable.ts';

parentPort?.postMessage(await answer(String(workerData)));

async function answer(folder: string): Promise<Answer> {
  try {
    const { site, trials, repeats, leftOut } = await readPublishable(folder);
    const analysed = trials.map((trial) => ({ trial, analysis: publishedAnalysis(trial, site.language) }));
    return { site, leftOut, trials: analysed, questions: pooledQuestions(site, analysed, repeats) };
  } catch (error) {
    if (error instanceof DataError) return { problems: error.problems };
    throw error;
  }
}
