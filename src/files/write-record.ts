import { join } from 'node:path';
import { stringify } from 'yaml';
import type { PublishedState } from '../trial/read-record.ts';
import type { Record } from './check-record.ts';
import { replaceFile } from './replace-file.ts';

const HEAD = '# What was published, by trial. Written by "npm run check -- --record"; not to be changed by hand.\n';

/**
 * Writes published.yaml: trials that are new or say under `changes` what is new get today's date, all others stay as they
 * are recorded. A change of which nothing is said is not recorded, so that its warning stays.
 *
 * @param today ISO date
 * @returns ids of the trials whose entry is new
 * @throws {Unwritten} where it cannot be written; what was recorded before is as it was
 */
export async function writeRecord(path: string, { now, before }: Record, today: string): Promise<readonly string[]> {
  const states = new Map<string, PublishedState>(before);
  const fresh: string[] = [];
  for (const [id, state] of now) {
    const was = before.get(id);
    if (was && (was.digest === state.digest || state.version <= was.version)) continue;
    states.set(id, { date: today, ...state });
    fresh.push(id);
  }
  const sorted = [...states].toSorted(([a], [b]) => (a < b ? -1 : 1));
  const text = HEAD + stringify(Object.fromEntries(sorted));
  if (fresh.length > 0) await replaceFile(join(path, 'published.yaml'), new TextEncoder().encode(text));
  return fresh;
}
