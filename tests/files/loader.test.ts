import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { LoaderContext } from 'astro/loaders';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { analysedTrial } from '../../src/files/analysed-trial.ts';
import { contentLoaders } from '../../src/files/loader.ts';

let content: string;
beforeAll(() => {
  content = join(mkdtempSync(join(tmpdir(), 'fairsown-')), 'content');
  const demonstration = join(import.meta.dirname, '..', '..', 'content');
  for (const part of ['site.yaml', 'lots.yaml', 'people.yaml', 'trials/herbs-lit-or-covered']) {
    cpSync(join(demonstration, part), join(content, part), { recursive: true });
  }
  vi.stubEnv('FAIRSOWN_CONTENT', content);
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(join(content, '..'), { recursive: true });
});

/** What the loaders need of Astro: a store, a log, and the watcher that it has while `dev` runs. */
function fakeContext() {
  const stored = new Map<string, unknown>();
  const store = {
    clear: () => stored.clear(),
    set: ({ id, data }: { id: string; data: unknown }) => stored.set(id, data),
  };
  const logger = { warn: () => {} };
  return { stored, context: { store, logger, watcher: {} } as unknown as LoaderContext };
}

test('both collections come from one reading; a mistake later on keeps the last good data and says why', async () => {
  const { site, trials } = contentLoaders();
  const [ofSite, ofTrials] = [fakeContext(), fakeContext()];
  await Promise.all([site.load?.(ofSite.context), trials.load?.(ofTrials.context)]);
  expect([...ofSite.stored.keys()]).toEqual(['site']);
  expect([...ofTrials.stored.keys()]).toEqual(['herbs-lit-or-covered']);
  const { file } = ofTrials.stored.get('herbs-lit-or-covered') as { file: string };
  expect(analysedTrial('herbs-lit-or-covered', file)).toMatchObject({
    trial: { id: 'herbs-lit-or-covered' },
    analysis: { format: 'fairsown-analysis/1', trial: 'herbs-lit-or-covered' },
  });

  appendFileSync(join(content, 'trials', 'herbs-lit-or-covered', 'counts.csv'), 'nobody,3,~20\n');
  await expect(trials.load?.(ofTrials.context)).rejects.toThrow('counts.csv');
  expect([...ofTrials.stored.keys()]).toEqual(['herbs-lit-or-covered']);
});

test('a mistake from the start stops', async () => {
  const { trials } = contentLoaders();
  const { context, stored } = fakeContext();
  stored.set('old', {});
  await expect(trials.load?.(context)).rejects.toThrow('counts.csv');
  expect([...stored.keys()]).toEqual(['old']);
});
