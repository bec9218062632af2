import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, onTestFinished, test } from 'vitest';
import { analysedTrial } from '../../src/files/analysed-trial.ts';
import { contentReader } from '../../src/files/content-reader.ts';
import { readPublishable } from '../../src/files/read-publishable.ts';
import { DataError } from '../../src/trial/data-error.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { generateSite } from '../bench/generate-site.ts';

/** One reading by a thread that remembers nothing. */
async function readAnalysed(content: string) {
  const reader = contentReader(content);
  return reader.read().finally(() => reader.stop());
}

const folder = mkdtempSync(join(tmpdir(), 'fairsown-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('the thread gives what reading and analysing here give', async () => {
  const content = join(folder, 'content');
  generateSite(content, 2);
  const { site, trials: read, leftOut } = await readPublishable(content);
  const { trials, ...rest } = await readAnalysed(content);
  expect(rest).toEqual({ site, leftOut, questions: [] });
  expect(trials.map(({ id, file }) => analysedTrial(id, file))).toEqual(
    read.map((trial) => ({ trial, analysis: publishedAnalysis(trial, site.language) })),
  );
});

test('a trial that is read again is another; one whose file is gone is missed', async () => {
  const content = join(folder, 'changing');
  generateSite(content, 1);
  const read = async () => (await readAnalysed(content)).trials.map(({ id, file }) => analysedTrial(id, file))[0];
  const before = await read();
  expect(await read()).toBe(before);
  appendFileSync(join(content, 'trials', 'trial-001', 'trial.yaml'), 'summary: added later\n');
  expect((await read())?.trial.summary).toBe('added later');
  expect(() => analysedTrial('trial-001', join(folder, 'gone'))).toThrow('build again');
});

test('what is wrong with the content arrives as a mistake in the content, with its place and without a stack', async () => {
  const error = await readAnalysed(join(folder, 'nowhere')).catch((reason: unknown) => reason);
  expect(error).toBeInstanceOf(DataError);
  expect((error as DataError).message).toContain('there is no such content folder');
  expect((error as DataError).stack).toBeUndefined();
});

test('one thread reads again and again: a change, a mistake, its mending, a new trial, a change of the site', async () => {
  const content = join(folder, 'again');
  generateSite(content, 3);
  const reader = contentReader(content);
  onTestFinished(() => reader.stop());
  const counts = join(content, 'trials', 'trial-002', 'counts.csv');
  const good = readFileSync(counts, 'utf8');
  const steps: (() => void)[] = [
    () => {},
    () => writeFileSync(counts, good.replace(/,\d+\n/, ',50\n')),
    () => cpSync(join(content, 'trials', 'trial-001'), join(content, 'trials', 'trial-004'), { recursive: true }),
    () => appendFileSync(join(content, 'trials', 'trial-004', 'trial.yaml'), 'aliases: [old]\n'),
    () => writeFileSync(join(content, 'questions.yaml'), QUESTION),
    () => appendFileSync(join(content, 'site.yaml'), 'paper: letter\n'),
    () => rmSync(join(content, 'trials', 'trial-003'), { recursive: true }),
  ];
  for (const step of steps) {
    step();
    expect(await reader.read()).toEqual(await readAnalysed(content));
  }
  expect((await reader.read()).questions).toHaveLength(1);

  writeFileSync(counts, good.replace(/,\d+\n/, ',51\n'));
  await expect(reader.read()).rejects.toThrow('trial-002/counts.csv');
  appendFileSync(join(content, 'trials', 'trial-001', 'trial.yaml'), 'aliases: [old]\n');
  await expect(reader.read()).rejects.toThrow('already leads to the trial');
  writeFileSync(counts, good);
  rmSync(join(content, 'trials', 'trial-004'), { recursive: true });
  expect(await reader.read()).toEqual(await readAnalysed(content));
});

const QUESTION = `jars:
  title: Do jars help?
  question: Does seed from a jar come up better?
  measure: germination
  trials: [trial-001, trial-002]
`;
