// What the thread of read-analysed.ts runs.
import { parentPort, workerData } from 'node:worker_threads';
import { DataError } from '../trial/data-error.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import type { Answer } from './read-analysed.ts';
import { readPublishable } from './read-publishable.ts';

parentPort?.postMessage(await answer(String(workerData)));

async function answer(folder: string): Promise<Answer> {
  try {
    const { site, trials, leftOut } = await readPublishable(folder);
    return {
      site,
      leftOut,
      trials: trials.map((trial) => ({ trial, analysis: publishedAnalysis(trial, site.language) })),
    };
  } catch (error) {
    if (error instanceof DataError) return { problems: error.problems };
    throw error;
  }
}
