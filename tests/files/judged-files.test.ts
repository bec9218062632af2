import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import * as checkTexts from '../../src/files/prose/check-texts.ts';
import { readSiteFolder } from '../../src/files/read-site-folder.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';

const content = join(import.meta.dirname, '..', '..', 'content');
const site = await readSiteFolder(content);

afterEach(() => vi.unstubAllEnvs());

test.each(readdirSync(join(content, 'trials')))(
  'a build finds in %s what a reading finds, also a second time',
  async (id) => {
    const folder = join(content, 'trials', id);
    const read = await readTrialFolder(folder, site);
    vi.stubEnv('NODE_ENV', 'production');
    expect(await readTrialFolder(folder, site)).toEqual(read);
    expect(await readTrialFolder(folder, site)).toEqual(read);
  },
);

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
