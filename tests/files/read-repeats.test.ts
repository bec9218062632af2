import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { pooledQuestions } from '../../src/files/pooled-questions.ts';
import { readContent } from '../../src/files/read-content.ts';
import { readPublishable } from '../../src/files/read-publishable.ts';
import { problemText } from '../../src/trial/problem-text.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { forgedWith, publishedElsewhere, rawFiles, zipped } from '../support/published-zip.ts';
import { temporaryContent } from './temporary-content.ts';

const COUNTS = { packet1: 36, packet2: 39, jar1: 44, jar2: 46 };
const files = await publishedElsewhere(rawFiles(COUNTS));
const QUESTIONS = `jars:
  title: Jars
  question: Does leek seed kept in a jar come up better?
  measure: germination
  matters: 10
  trials: [leek, other-jars, { trial: third, treatment: jar, control: packet }]
`;

/** A content folder whose question names `leek`, `other-jars` and `third`, with these zips under repeats/. */
async function contentWith(zips: Readonly<Record<string, Uint8Array>>, site = ''): Promise<string> {
  const folder = await temporaryContent({
    'questions.yaml': QUESTIONS,
    ...(site && { 'site.yaml': `name: A\nbase: https://example.org\nlanguage: en\nlicence: CC-BY-4.0\n${site}\n` }),
  });
  await mkdir(join(folder, 'repeats'));
  for (const [name, bytes] of Object.entries(zips)) await writeFile(join(folder, 'repeats', name), bytes);
  return folder;
}
const third = zipped(await publishedElsewhere(rawFiles({ packet1: 30, jar1: 45 }), { id: 'their-own-name' }));

async function pooledIn(folder: string) {
  const { site, trials, repeats } = await readPublishable(folder);
  const analysed = trials.map((trial) => ({ trial, analysis: publishedAnalysis(trial, site.language) }));
  const [question] = pooledQuestions(site, analysed, repeats);
  if (!question) throw new Error('no question');
  return question.pooled;
}

async function saidOf(zips: Readonly<Record<string, Uint8Array>>): Promise<string> {
  const { repeats, problems } = await readContent(await contentWith({ 'third.zip': third, ...zips }));
  return [...problems, ...repeats.flatMap((repeat) => repeat.problems)]
    .map((problem) => problemText(problem).replaceAll(/\S*fairsown-\w+/g, 'content'))
    .join('\n');
}

test('verified zips count like trials of this site, by the name of the zip, with the address of their report', async () => {
  const pooled = await pooledIn(await contentWith({ 'other-jars.zip': zipped(files), 'third.zip': third }));
  expect(pooled.trials.map(({ trial, title, elsewhere, from, basis }) => ({ trial, title, elsewhere, from, basis }))).toEqual([
    { trial: 'leek', title: 'Jar or packet', elsewhere: false, from: null, basis: 'interval' },
    { trial: 'other-jars', title: 'Jars at the other site', elsewhere: true, from: 'https://other.example/trials/other-jars/', basis: 'interval' },
    { trial: 'third', title: 'Jars at the other site', elsewhere: true, from: 'https://other.example/trials/their-own-name/', basis: 'half-seeds' },
  ]); // prettier-ignore
  expect(pooled.estimate).not.toBeNull();
});

test('a trial published in another language is verified in that', async () => {
  const german = await publishedElsewhere(rawFiles(COUNTS), { language: 'de' });
  expect(new TextDecoder().decode(german.get('analysis.json'))).toContain('Partie');
  expect(await saidOf({ 'other-jars.zip': zipped(german) })).toBe('');
});

test('an altered file is refused, and so is a count that was changed together with every digest', async () => {
  const changed = rawFiles({ ...COUNTS, jar2: 50 })['counts.csv'] ?? '';
  const altered = new Map(files).set('counts.csv', new TextEncoder().encode(changed));
  expect(await saidOf({ 'other-jars.zip': zipped(altered) })).toMatchInlineSnapshot(`
    "content/repeats/other-jars.zip: this trial of another site does not count: it is not as it was published: counts.csv was altered: it is not the file that was published; counts-long.csv is not what the raw files give; counts-long-spreadsheet.csv is not what the raw files give
      error: Fetch the zip again from the report on its own site, or take it out of questions.yaml."
  `);
  expect(await saidOf({ 'other-jars.zip': zipped(forgedWith(files, 'counts.csv', changed)) })).toMatchInlineSnapshot(`
    "content/repeats/other-jars.zip: this trial of another site does not count: it is not as it was published: counts-long.csv is not what the raw files give; counts-long-spreadsheet.csv is not what the raw files give
      error: Fetch the zip again from the report on its own site, or take it out of questions.yaml."
  `);
});

test('a figure that the raw files do not give is named', async () => {
  const analysis = JSON.parse(new TextDecoder().decode(files.get('analysis.json')));
  analysis.results[0].comparisons[0].estimate += 1;
  const touched = forgedWith(files, 'analysis.json', JSON.stringify(analysis));
  expect(await saidOf({ 'other-jars.zip': zipped(touched) })).toMatchInlineSnapshot(`
    "content/repeats/other-jars.zip: this trial of another site does not count: of its 53 figures 1 differs from what its raw files give: results[germination].comparisons[leek, jar].estimate
      error: Fetch the zip again from the report on its own site, or take it out of questions.yaml."
  `);
});

test('what is no zip of a trial is refused: another zip, names that lead out, a bomb, not a zip at all', async () => {
  const said = async (zip: Uint8Array) => /does not count: (.*)/.exec(await saidOf({ 'other-jars.zip': zip }))?.[1];
  expect(await said(zipSync({ 'a.txt': new Uint8Array(3) }))).toMatchInlineSnapshot(
    `"these are not the files of a published trial: there is no analysis.json that can be read"`,
  );
  expect(await said(zipSync({ '../../evil.csv': new Uint8Array(3) }))).toMatchInlineSnapshot(
    `"it holds a file whose name leads out of the folder; it is not unpacked"`,
  );
  expect(await said(zipSync({ 'counts.csv': new Uint8Array(20_000_001) }))).toMatchInlineSnapshot(
    `"it unpacks to more than a trial can hold (500 files, 20 MB a file, 100 MB together)"`,
  );
  expect(await said(new TextEncoder().encode('PK no zip'))).toMatchInlineSnapshot(
    `"it cannot be read as a zip; it may be damaged"`,
  );
});

test('a zip that no question names is not read; one that is called like a trial here cannot be told from it', async () => {
  expect(await saidOf({ 'other-jars.zip': zipped(files), 'unasked.zip': new Uint8Array(4), 'notes.txt': new Uint8Array() })).toMatchInlineSnapshot(`
    "content/repeats/notes.txt: nothing reads this: it is no zip
      notice: Put the zip of a published trial here, as its site offers it.
    content/repeats/unasked.zip: no question names this zip, so it is not read
      notice: Name "unasked" among the trials of a question in questions.yaml."
  `); // prettier-ignore
  expect(await saidOf({ 'other-jars.zip': zipped(files), 'leek.zip': zipped(files) })).toMatchInlineSnapshot(`
    "content/repeats/leek.zip: there is a trial "leek" in trials/ as well, so a question cannot tell them apart
      error: Give the zip another name, and use that name in questions.yaml."
  `);
});

test('a link that leads out of the folder is not followed', async () => {
  const folder = await contentWith({ 'third.zip': third });
  const outside = await contentWith({ 'other-jars.zip': zipped(files) });
  await symlink(join(outside, 'repeats', 'other-jars.zip'), join(folder, 'repeats', 'other-jars.zip'));
  const { repeats } = await readContent(folder);
  expect(repeats.map(({ id, repeated }) => [id, repeated === null])).toEqual([
    ['other-jars', true],
    ['third', false],
  ]);
  expect(repeats[0]?.problems[0]?.message).toContain('it is a link that leads out of the content folder');
});

test('what is neither a trial nor a zip is unknown', async () => {
  expect(await saidOf({})).toMatchInlineSnapshot(`
    "content/questions.yaml:6:18 jars.trials[1]: there is no trial "other-jars" in trials/ or repeats/
      error: Known here: third, leek."
  `);
});

test('a refused zip stops the site; with on_problem: leave-out it is named and left out of the answer', async () => {
  const zips = { 'other-jars.zip': new Uint8Array(9), 'third.zip': third };
  await expect(readPublishable(await contentWith(zips))).rejects.toThrow('does not count: it cannot be read as a zip');
  const pooled = await pooledIn(await contentWith(zips, 'on_problem: leave-out'));
  expect(pooled.leftOut).toMatchObject([{ trial: 'other-jars', reason: 'data-fail' }]);
  expect(pooled.trials.map(({ trial }) => trial)).toEqual(['leek', 'third']);
  expect(pooled.verdict).toBe('not-pooled');
});
