import type { Analysis } from '../analysis/analysis.ts';
import { DEFAULT_SITE } from '../trial/read-site.ts';
import { readTrial } from '../trial/read-trial.ts';

/** Cut down to the trial when it is published, so that their digests are those of SHA256SUMS only. */
export const CUT: readonly string[] = ['lots.yaml', 'people.yaml'];

/** A published trial read from its raw files alone: those that its analysis names, with its lots and people. */
export function publishedTrial(
  files: ReadonlyMap<string, Uint8Array>,
  { trial, inputs }: Pick<Analysis, 'trial' | 'inputs'>,
): ReturnType<typeof readTrial> {
  const named = new Set([...inputs.map(({ file }) => file), ...CUT]);
  const raw = new Map([...files].filter(([name]) => named.has(name)));
  return readTrial({ id: trial, folder: '', files: raw, site: DEFAULT_SITE });
}
