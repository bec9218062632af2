import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { fixedOn } from '../../src/analysis/fixed-on.ts';
import { analysedTrial } from '../../src/files/analysed-trial.ts';
import { readSiteFolder } from '../../src/files/read-site-folder.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';

test('of many trials the readings are not held, but are there for whoever looks', async () => {
  const content = join(import.meta.dirname, '..', '..', 'content');
  vi.stubEnv('NODE_ENV', 'production');
  onTestFinished(() => void vi.unstubAllEnvs());
  const { analysed } = await readTrialFolder(join(content, 'trials', 'leek-wet-start'), await readSiteFolder(content));
  const trials = Array.from({ length: 502 }, (_, index) => analysedTrial(`leek-${index}`, analysed ?? ''));
  const [first, last] = [trials[0], trials.at(-1)];
  const held = (one = first) => Object.getOwnPropertyDescriptor(one?.trial, 'counts')?.value !== undefined;
  expect([held(first), held(last)]).toEqual([true, false]);
  expect(last?.trial.counts.length).toBeGreaterThan(10);
  expect(last).toEqual(first);
  expect(JSON.stringify(last)).toBe(JSON.stringify(first));
  expect(last && fixedOn(last.trial)).toEqual(first && fixedOn(first.trial));
});
