import { appendFileSync, mkdirSync, readFileSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readSiteFolder } from '../../src/files/read-site-folder.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';
import { trialMemory } from '../../src/files/trial-memory.ts';
import { temporaryContent } from './temporary-content.ts';

const LONG_AGO = new Date('2020-01-01');

/** A memory that has read the trial `leek`, whose files have lain there for long. */
async function remembered() {
  const content = await temporaryContent({ 'trials/leek/photos/captions.yaml': '{}\n' });
  const folder = join(content, 'trials', 'leek');
  const site = await readSiteFolder(content);
  const memory = trialMemory();
  const read = async () => {
    const known = memory.known(folder, site);
    if (known) return known;
    const trial = await readTrialFolder(folder, site);
    memory.keep(folder, trial);
    return trial;
  };
  await settled();
  return { content, folder, site, memory, read, first: await read() };
}

/** Until the times of files that were just written are past. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 150));

test('what did not change is known', async () => {
  const { read, first } = await remembered();
  expect(await read()).toBe(first);
});

test.each<[string, (folder: string) => void]>([
  ['a file that grew', (folder) => appendFileSync(join(folder, 'counts.csv'), '\n')],
  ['a file of the same size', (folder) => rewrite(join(folder, 'counts.csv'), /\d/g, '1')],
  ['the same size and an old time', (folder) => rewrite(join(folder, 'counts.csv'), /\d/g, '1', LONG_AGO)],
  ['a new file', (folder) => writeFileSync(join(folder, 'report.md'), 'Words.')],
  ['a file that is gone', (folder) => rmSync(join(folder, 'counts.csv'))],
  ['another name', (folder) => renameSync(join(folder, 'counts.csv'), join(folder, 'count.csv'))],
  ['a caption', (folder) => appendFileSync(join(folder, 'photos', 'captions.yaml'), '\n')],
  ['a folder for what nobody reads', (folder) => mkdirSync(join(folder, 'raw'))],
])('%s is read again', async (_, change) => {
  const { folder, site, memory, first, read } = await remembered();
  change(folder);
  expect(memory.known(folder, site)).toBeNull();
  expect(await read()).toEqual(await readTrialFolder(folder, site));
  expect(await read()).not.toBe(first);
});

test('another site file makes all of them unknown', async () => {
  const { content, folder, memory, site } = await remembered();
  expect(memory.known(folder, { ...site, site: { ...site.site, language: 'de' } })).toBeNull();
  appendFileSync(join(content, 'lots.yaml'), 'further: { crop: Leek }\n');
  expect(memory.known(folder, await readSiteFolder(content))).toBeNull();
});

test('what changed just now is not remembered: the next change could bear the same time', async () => {
  const { folder, memory, site } = await remembered();
  appendFileSync(join(folder, 'counts.csv'), '\n');
  expect(memory.known(folder, site)).toBeNull();
  memory.keep(folder, await readTrialFolder(folder, site));
  expect(memory.known(folder, site)).toBeNull();
});

function rewrite(file: string, from: RegExp, to: string, time?: Date): void {
  writeFileSync(file, readFileSync(file, 'utf8').replace(from, to));
  if (time) utimesSync(file, time, time);
}
