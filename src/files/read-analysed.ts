import { Worker } from 'node:worker_threads';
import { DataError } from '../trial/data-error.ts';
import type { Problem } from '../trial/problem.ts';
import type { Site } from '../trial/trial.ts';
import type { LeftOut } from './read-publishable.ts';
import type { PooledQuestion } from './pooled-questions.ts';

/** What may be published, analysed. */
export interface Analysed {
  readonly site: Site;
  /** Each kept in a file (`analysedTrial`): what a thousand trials hold is too much to be handed around. */
  readonly trials: readonly { readonly id: string; readonly file: string }[];
  /** What several trials say together, with those of other sites. */
  readonly questions: readonly PooledQuestion[];
  /** Trials with errors that the site leaves out. */
  readonly leftOut: readonly LeftOut[];
}

/** What the thread sends: errors lose their kind on the way, so what is wrong with the content goes as it is. */
export type Answer = Analysed | { readonly problems: readonly Problem[] };

/**
 * The content folder read, checked and analysed in a thread of its own, which runs the code as Node runs it: without
 * Astro's bundler in between this takes half the time, and a change of the code is seen at the next reading.
 *
 * @throws {DataError} listing every error of all files
 */
export function readAnalysed(folder: string): Promise<Analysed> {
  return new Promise((resolve, reject) => {
    const thread = new Worker(new URL('./analysing-thread.ts', import.meta.url), { workerData: folder });
    thread.once('message', (answer: Answer) =>
      'problems' in answer ? reject(new DataError(answer.problems)) : resolve(answer),
    );
    thread.once('error', reject);
    thread.once('exit', (code) => reject(new Error(`Reading ${folder} stopped with code ${code}`)));
  });
}
