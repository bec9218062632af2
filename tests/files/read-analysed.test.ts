import { appendFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { analysedTrial } from '../../src/files/analysed-trial.ts';
import { readAnalysed } from '../../src/files/read-analysed.ts';
import { readPublishable } from '../../src/files/read-publishable.ts';
import { DataError } from '../../src/trial/data-error.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { generateSite } from '../bench/generate-site.ts';

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
