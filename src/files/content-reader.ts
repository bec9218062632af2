import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { DataError } from '../trial/data-error.ts';
import type { Problem } from '../trial/problem.ts';
import type { Site } from '../trial/trial.ts';
import type { KnownRepeat } from './known-repeats.ts';
import type { LeftOut } from './read-publishable.ts';
import type { PooledQuestion } from './pooled-questions.ts';

export interface ReadTrial {
  readonly id: string;
  /** Where it is kept (`analysedTrial`): what a thousand trials hold is too much to be handed around. */
  readonly file: string;
  readonly repeats: readonly KnownRepeat[];
}

/** What may be published, analysed. */
export interface Analysed {
  readonly site: Site;
  readonly trials: readonly ReadTrial[];
  /** What several trials say together, with those of other sites. */
  readonly questions: readonly PooledQuestion[];
  /** Trials with errors that the site leaves out. */
  readonly leftOut: readonly LeftOut[];
}

/** What the thread sends: errors lose their kind on the way, so what is wrong with the content goes as it is. */
export type Answer = Analysed | { readonly problems: readonly Problem[] };

/** Reads a content folder, again and again. */
export interface ContentReader {
  /**
   * What stands in it now. Only trials in whose folder something changed are read again; what is said is what a reading of
   * everything says. One reading at a time.
   *
   * @throws {DataError} listing every error of all files
   */
  read(): Promise<Analysed>;
  /** Forgets all: the next reading is one of everything, by the code as it is then. */
  stop(): void;
}

/**
 * The content folder read, checked and analysed in a thread of its own, which runs the code as Node runs it: without
 * Astro's bundler in between this takes half the time.
 */
export function contentReader(folder: string): ContentReader {
  let thread: Worker | undefined;

  function stop(): void {
    void thread?.terminate();
    thread = undefined;
  }
  async function read(): Promise<Analysed> {
    const reader = (thread ??= new Worker(new URL('./analysing-thread.ts', import.meta.url), { workerData: folder }));
    reader.ref();
    const answer = await answerOf(reader).catch((error: unknown) => {
      stop();
      throw error;
    });
    reader.unref(); // it must not keep a process that is through
    if ('problems' in answer) throw new DataError(answer.problems);
    return answer;
  }
  return { read, stop };
}

async function answerOf(thread: Worker): Promise<Answer> {
  const over = new AbortController();
  const exit = once(thread, 'exit', over).then(([code]) => {
    throw new Error(`Reading the content stopped with code ${code}`);
  });
  try {
    const message = once(thread, 'message', over); // an error of the thread comes out here
    thread.postMessage('read');
    const [answer] = await Promise.race([message, exit]);
    return answer;
  } finally {
    over.abort();
  }
}
