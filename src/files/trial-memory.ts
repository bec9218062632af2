import { readdirSync, statSync, type BigIntStats } from 'node:fs';
import { join } from 'node:path';
import type { ReadSite } from '../trial/read-site.ts';
import { READ_BELOW, type TrialFolder } from './read-trial-folder.ts';

/** Trials as they were read before. */
export interface TrialMemory {
  /** The trial, where nothing in its folder has changed since it was kept; to be asked before it is read. */
  known(folder: string, site: Pick<ReadSite, 'site' | 'unsure'>): TrialFolder | null;
  /** Keeps what was read after the last question for it. */
  keep(folder: string, trial: TrialFolder): void;
}

/**
 * A memory for readings of the same content folder one after the other, so that only trials are read again in whose
 * folder something changed. Told by name, size, times and place on the disk of every file; a change of the site files
 * forgets all. Files that changed so lately that a second change could bear the same time are not remembered.
 */
export function trialMemory(): TrialMemory {
  let [asked, around]: [object | null, string] = [null, ''];
  let kept = new Map<string, { readonly look: string; readonly trial: TrialFolder }>();
  const looks = new Map<string, Look>();
  return {
    known(folder, { site, unsure }) {
      if (site !== asked) {
        const now = JSON.stringify([site, [...unsure]]);
        if (now !== around) kept = new Map();
        [asked, around] = [site, now];
      }
      const look = lookOf(folder);
      looks.set(folder, look);
      const found = kept.get(folder);
      return found?.look === look.text ? found.trial : null;
    },
    keep(folder, trial) {
      const look = looks.get(folder);
      if (look?.settled) kept.set(folder, { look: look.text, trial });
      else kept.delete(folder);
    },
  };
}

/** What a folder looks like from outside, and whether a change from now on would be seen by it. */
interface Look {
  readonly text: string;
  readonly settled: boolean;
}

/** Far more than the steps in which file systems count time. */
const STEP = 100_000_000n;

function lookOf(folder: string): Look {
  const now = BigInt(Date.now()) * 1_000_000n;
  let latest = 0n;
  const lines: string[] = [];
  const look = (path: string): BigIntStats | undefined => {
    const stats = statSync(path, { bigint: true, throwIfNoEntry: false });
    const { dev, ino, size, mtimeNs, ctimeNs } = stats ?? {};
    for (const time of [mtimeNs, ctimeNs]) if (time !== undefined && time > latest) latest = time;
    lines.push([path, dev, ino, size, mtimeNs, ctimeNs].join(' '));
    return stats;
  };
  const list = (path: string): void => {
    if (!look(path)?.isDirectory()) return;
    for (const name of readdirSync(path)) {
      if (path === folder && READ_BELOW.includes(name)) list(join(path, name));
      else look(join(path, name));
    }
  };
  list(folder);
  return { text: lines.join('\n'), settled: latest < now - STEP };
}
