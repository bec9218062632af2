import { availableParallelism } from 'node:os';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Piscina } from 'piscina';
import type { ReadSite } from '../trial/read-site.ts';
import { readTrialFolder, type TrialFolder } from './read-trial-folder.ts';
import type { TrialMemory } from './trial-memory.ts';

/** From so many trials on it pays to start threads. */
const MANY = 150;

/** Trials that a thread is given at once. */
const AT_ONCE = 10;

/**
 * Reads and checks trials' folders, many of them on all cores. What is said of each is the same, and in the order of the
 * folders.
 *
 * @param progress told before each trial is read; of many, after each batch the last one of it
 * @param many     from how many trials on threads are used
 * @param memory   of the readings before this one: a trial that it knows is not read
 */
export async function readTrials(
  folders: readonly string[],
  site: Pick<ReadSite, 'site' | 'unsure'>,
  progress: (trial: string, index: number, total: number) => void,
  { many = MANY, memory }: { readonly many?: number; readonly memory?: TrialMemory | undefined } = {},
): Promise<readonly TrialFolder[]> {
  const known = new Map(folders.map((folder) => [folder, memory?.known(folder, site) ?? null]));
  const wanted = folders.filter((folder) => !known.get(folder));
  const cores = availableParallelism();
  const read = wanted.length >= many && cores > 1 ? onAllCores : onThisOne;
  for (const [index, trial] of (await read(wanted, site, progress, cores)).entries()) {
    const folder = wanted[index] ?? '';
    memory?.keep(folder, trial);
    known.set(folder, trial);
  }
  return folders.map((folder) => known.get(folder) as TrialFolder);
}

async function onThisOne(
  folders: readonly string[],
  site: Pick<ReadSite, 'site' | 'unsure'>,
  progress: (trial: string, index: number, total: number) => void,
): Promise<readonly TrialFolder[]> {
  const trials: TrialFolder[] = [];
  for (const [index, folder] of folders.entries()) {
    progress(basename(folder), index, folders.length);
    trials.push(await readTrialFolder(folder, site));
  }
  return trials;
}

async function onAllCores(
  folders: readonly string[],
  { site, unsure }: Pick<ReadSite, 'site' | 'unsure'>,
  progress: (trial: string, index: number, total: number) => void,
  cores: number,
): Promise<readonly TrialFolder[]> {
  const threads = new Piscina({
    filename: fileURLToPath(new URL('./reading-thread.ts', import.meta.url)),
    minThreads: cores,
    maxThreads: cores,
    workerData: { site, unsure },
  });
  let read = 0;
  const batches = Array.from({ length: Math.ceil(folders.length / AT_ONCE) }, (_, index) =>
    folders.slice(index * AT_ONCE, (index + 1) * AT_ONCE),
  );
  try {
    const found = await Promise.all(
      batches.map(async (batch) => {
        const trials: readonly TrialFolder[] = await threads.run(batch);
        read += batch.length;
        progress(basename(batch.at(-1) ?? ''), read - 1, folders.length);
        return trials;
      }),
    );
    return found.flat();
  } finally {
    await threads.destroy();
  }
}
