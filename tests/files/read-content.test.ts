import { mkdir, symlink, truncate, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { readContent } from '../../src/files/read-content.ts';
import { readPublishable } from '../../src/files/read-publishable.ts';
import { readSiteFolder } from '../../src/files/read-site-folder.ts';
import { readTrialFolder } from '../../src/files/read-trial-folder.ts';
import { readTrials } from '../../src/files/read-trials.ts';
import type { Problem } from '../../src/trial/problem.ts';
import { TRIAL_FILES } from '../trial/trial-files.ts';
import { temporaryContent } from './temporary-content.ts';

/** Problems with paths from the content folder. */
const said = (folder: string, problems: readonly Problem[]) =>
  problems.map(({ file, rule }) => `${relative(folder, file) || '.'} ${rule}`);

test('a content folder: site, trials sorted by name, progress, no problems', async () => {
  const folder = await temporaryContent({
    'trials/a-leek/trial.yaml': TRIAL_FILES['trial.yaml'],
    'trials/a-leek/sowings.csv': TRIAL_FILES['sowings.csv'],
    'trials/a-leek/counts.csv': TRIAL_FILES['counts.csv'],
    'trials/.hidden/trial.yaml': 'not read',
  });
  const told: string[] = [];
  const content = await readContent(folder, (trial, index, total) => told.push(`${trial} ${index} ${total}`));
  expect(content.problems).toEqual([]);
  expect(content.site.name).toBe('Test group');
  expect(content.trials.map(({ id, trial, problems }) => [id, trial?.id, problems])).toEqual([
    ['a-leek', 'a-leek', []],
    ['leek', 'leek', []],
  ]);
  expect(told).toEqual(['a-leek 0 2', 'leek 1 2']);
});

test('paths of problems are as seen from where the command runs', async () => {
  const folder = await temporaryContent({ 'trials/leek/counts.csv': 'sowing,day,germinated\ns01,5,99\n' });
  const [leek] = (await readContent(folder)).trials;
  expect(leek?.trial).toBeNull();
  expect(leek?.problems[0]?.file).toBe(relative(process.cwd(), join(folder, 'trials/leek/counts.csv')));
});

test('a content folder that is not there, or empty', async () => {
  const folder = await temporaryContent();
  const lost = await readContent(join(folder, 'nowhere'));
  expect(said(folder, lost.problems)).toEqual(['nowhere folder-missing']);
  await mkdir(join(folder, 'empty'));
  const empty = await readContent(join(folder, 'empty'));
  expect(said(folder, empty.problems)).toEqual(['empty/site.yaml site-missing']);
  expect(empty.trials).toEqual([]);
});

test('links that lead out of the folder are refused, links inside are followed', async () => {
  const outside = await temporaryContent();
  const folder = await temporaryContent({
    'trials/leek/counts.csv': null,
    'trials/leek/real.csv': TRIAL_FILES['counts.csv'],
  });
  await symlink('real.csv', join(folder, 'trials/leek/counts.csv'));
  await symlink(join(outside, 'trials/leek'), join(folder, 'trials/linked'));
  await symlink(join(outside, 'people.yaml'), join(folder, 'trials/leek/people.yaml'));
  await symlink('nowhere', join(folder, 'trials/leek/key.csv'));
  const { problems, trials } = await readContent(folder);
  expect(said(folder, problems)).toEqual(['trials/linked link-outside']);
  expect(trials.map(({ id, problems }) => [id, said(folder, problems)])).toEqual([
    [
      'leek',
      ['trials/leek/people.yaml link-outside', 'trials/leek/key.csv link-outside', 'trials/leek/real.csv unknown-file'],
    ],
  ]);
  expect(trials[0]?.trial).toBeNull();
});

test('a site file that is a link out of the folder is refused', async () => {
  const outside = await temporaryContent();
  const folder = await temporaryContent({ 'people.yaml': null });
  await symlink(join(outside, 'people.yaml'), join(folder, 'people.yaml'));
  expect(said(folder, (await readContent(folder)).problems)).toEqual(['people.yaml link-outside']);
});

test('no more of a file is read than may be in it', async () => {
  const folder = await temporaryContent();
  await truncate(join(folder, 'trials/leek/counts.csv'), 30_000_000);
  const [leek] = (await readContent(folder)).trials;
  expect(said(folder, leek?.problems ?? [])).toEqual(['trials/leek/counts.csv file-too-large']);
  expect(leek?.files.get('counts.csv')?.length).toBe(20_000_001);
});

const PICTURE = await sharp({ create: { width: 4, height: 3, channels: 3, background: '#684' } })
  .jpeg()
  .toBuffer();

test('pictures are listed, not read; other folders and files are named', async () => {
  const folder = await temporaryContent({
    'trials/leek/photos/8-s01.jpg': PICTURE,
    'trials/leek/photos/captions.yaml': '8-s01.jpg: { alt: A tray. }\n',
    'trials/leek/sheets/counting.pdf': 'x',
    'trials/leek/raw/scan.txt': 'x',
    'trials/note.txt': 'x',
  });
  const { trials, problems } = await readContent(folder);
  expect(said(folder, problems)).toEqual(['trials/note.txt unknown-file']);
  expect(said(folder, trials[0]?.problems ?? [])).toEqual(['trials/leek/raw unknown-file']);
  expect(trials[0]?.trial?.photos.map(({ file, day }) => [file, day])).toEqual([['photos/8-s01.jpg', 8]]);
  expect(trials[0]?.files.get('photos/8-s01.jpg')).toHaveLength(0);
});

test('questions are checked against the trials there are', async () => {
  const question = (trials: string) =>
    temporaryContent({
      'questions.yaml': `jar:\n  title: Jar\n  question: Does it?\n  measure: germination\n  trials: ${trials}\n`,
      'trials/leek/trial.yaml': `${TRIAL_FILES['trial.yaml']}outcomes: [{ id: main, measure: germination }]\n`,
    });
  const messages = async (trials: string) =>
    (await readContent(await question(trials))).problems.map(({ message }) => message);
  expect(
    await messages('[leek, { trial: leek, outcome: main, lot: leek-2025, treatment: jar, control: packet }]'),
  ).toEqual([]);
  expect(await messages('[leeek, { trial: leek, outcome: mian, lot: cress, treatment: tin }]')).toEqual([
    'there is no trial "leeek" in trials/ or repeats/',
    'there is no outcome "mian" in the trial leek',
    'there is no lot "cress" in the trial leek',
    'there is no treatment "tin" in the trial leek',
  ]);
});

test('an old id that leads to two trials', async () => {
  const files = (id: string, aliases: string) => ({
    [`trials/${id}/trial.yaml`]: `${TRIAL_FILES['trial.yaml']}aliases: ${aliases}\n`,
    [`trials/${id}/sowings.csv`]: TRIAL_FILES['sowings.csv'],
    [`trials/${id}/counts.csv`]: TRIAL_FILES['counts.csv'],
  });
  const folder = await temporaryContent({ ...files('leek', '[jar]'), ...files('onion', '[Jar, leek]') });
  const { trials } = await readContent(folder);
  expect(trials.map(({ trial, problems }) => [trial?.id, problems.map(({ message }) => message)])).toEqual([
    ['leek', []],
    [
      undefined,
      ['the old id "Jar" already leads to the trial "leek"', 'the old id "leek" already leads to the trial "leek"'],
    ],
  ]);
});

test('one trial anywhere: with the site two levels up, with its own files, or with neither', async () => {
  const folder = await temporaryContent();
  expect((await readTrialFolder(join(folder, 'trials/leek'))).trial?.authors[0]?.name).toBe('Mara Example');

  const alone = join(folder, 'incoming/somewhere/leek');
  await mkdir(alone, { recursive: true });
  for (const [name, text] of Object.entries(TRIAL_FILES)) await writeFile(join(alone, name), text);
  const bare = await readTrialFolder(alone);
  expect(said(folder, bare.problems)).toEqual([
    'incoming/somewhere/leek/trial.yaml unknown-person',
    'incoming/somewhere/leek/trial.yaml unknown-lot',
  ]);

  await writeFile(join(alone, 'people.yaml'), 'mara: { name: Mara }\n');
  await writeFile(join(alone, 'lots.yaml'), 'leek-2025: { crop: leek, species: Allium porrum }\n');
  expect((await readTrialFolder(alone)).trial?.licence).toBe('CC-BY-4.0');
  expect(said(folder, (await readTrialFolder(join(folder, 'lost'))).problems)).toEqual(['lost folder-missing']);
});

test('mistakes in the site around a trial come with it', async () => {
  const folder = await temporaryContent({ 'lots.yaml': 'leek-2025: { crop: leek }\n' });
  const { trial, problems } = await readTrialFolder(join(folder, 'trials/leek'));
  expect(trial).toBeNull();
  expect(said(folder, problems)).toEqual(['lots.yaml missing']);
});

test('what may be published: everything or nothing, unless the site leaves trials with mistakes out', async () => {
  const broken = { 'trials/bad/trial.yaml': 'title: x\n' };
  await expect(readPublishable(await temporaryContent(broken))).rejects.toThrow(
    /bad\/trial.yaml:1:1 question: is missing/,
  );
  const leaving = await temporaryContent({
    ...broken,
    'site.yaml': 'name: x\nbase: https://example.org\nlanguage: en\nlicence: CC0-1.0\non_problem: leave-out\n',
  });
  const { trials, leftOut } = await readPublishable(leaving);
  expect([trials.map(({ id }) => id), leftOut.map(({ id }) => id)]).toEqual([['leek'], ['bad']]);
  expect(leftOut[0]?.problems.map(({ field }) => field)).toEqual([
    'question',
    'status',
    'authors',
    'lots',
    'treatments',
  ]);
  const noSite = await temporaryContent({ 'lots.yaml': 'x: y\n' });
  await expect(readPublishable(noSite)).rejects.toThrow(/lots.yaml:1:1 x/);
});

test('many trials are read in threads: the same trials, problems and order', async () => {
  const trial = (name: string) =>
    Object.fromEntries(Object.entries(TRIAL_FILES).map(([file, text]) => [`trials/${name}/${file}`, text]));
  const names = Array.from({ length: 23 }, (_, index) => `t-${String(index).padStart(2, '0')}`);
  const folder = await temporaryContent({
    ...Object.assign({}, ...names.map(trial)),
    'trials/t-03/counts.csv': 'sowing,day,germinated\ns01,5,99\n',
    'trials/t-03/report.mdx': 'It <Claim is="higher">came up more</Claim>.\n',
    'trials/t-17/unknown.txt': 'x',
    'trials/t-22/report.mdx': 'It proves it: <Num of="differnce"/>\n',
  });
  const folders = ['leek', ...names].map((name) => join(folder, 'trials', name));
  const site = await readSiteFolder(folder);
  const told: [string, number, number][] = [];
  const inThreads = await readTrials(folders, site, (...step) => told.push(step), { many: 2 });
  const here = await readTrials(folders, site, () => {});
  expect(inThreads).toEqual(here);
  expect(here.flatMap(({ problems }) => problems.map(({ rule }) => rule))).toContain('prose-choice');
  expect(
    told
      .map(([, index]) => index)
      .toSorted((a, b) => a - b)
      .at(-1),
  ).toBe(23);
  expect(told.every(([, , total]) => total === 24)).toBe(true);
});
