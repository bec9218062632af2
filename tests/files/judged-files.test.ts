import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { toldTrial } from '../../src/archive/told-trial.ts';
import { analysedTrial } from '../../src/files/analysed-trial.ts';
import * as checkTexts from '../../src/files/prose/check-texts.ts';
import { readSiteFolder } from '../../src/files/read-site-folder.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';

const content = join(import.meta.dirname, '..', '..', 'content');
const site = await readSiteFolder(content);

afterEach(() => vi.unstubAllEnvs());

test.each(readdirSync(join(content, 'trials')))(
  'a build finds in %s what a reading finds, also a second time',
  async (id) => {
    const folder = join(content, 'trials', id);
    const read = await readTrialFolder(folder, site);
    expect(read.analysed).toBe(null);
    vi.stubEnv('NODE_ENV', 'production');
    const found = await readTrialFolder(folder, site);
    expect({ ...found, analysed: null }).toEqual(read);
    expect(await readTrialFolder(folder, site)).toEqual(found);
    const told = toldTrial(read.trial as Trial);
    expect(analysedTrial(id, found.analysed ?? '')).toEqual({
      trial: told,
      analysis: publishedAnalysis(told, site.site.language),
    });
  },
);

test('an analysis that is gone, or was changed, is worked out again', async () => {
  vi.stubEnv('NODE_ENV', 'production');
  const read = async () => (await readTrialFolder(join(content, 'trials', 'leek-wet-start'), site)).analysed ?? '';
  const file = await read();
  const before = readFileSync(file);
  rmSync(file);
  expect(readFileSync(await read())).toEqual(before);
  writeFileSync(file, before.subarray(0, 5000));
  expect(readFileSync(await read())).toEqual(before);
});

test('a build that knows the files does not judge them again; with other lots around it does', async () => {
  const judging = vi.spyOn(checkTexts, 'checkTexts');
  const folder = join(content, 'trials', 'peas-soaked-porch');
  await readTrialFolder(folder, site);
  expect(judging).toHaveBeenCalled();
  vi.stubEnv('NODE_ENV', 'production');
  await readTrialFolder(folder, site);
  judging.mockClear();
  await readTrialFolder(folder, site);
  expect(judging).not.toHaveBeenCalled();
  const elsewhere = { ...site, site: { ...site.site, lots: {} } };
  const { problems } = await readTrialFolder(folder, elsewhere);
  expect(problems.map(({ rule }) => rule)).toContain('unknown-lot');
});
