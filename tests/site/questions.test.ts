import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { unzipped } from '../../src/archive/unzipped.ts';
import { runRScript } from '../support/run-r-script.ts';

const site = inject('site');
const read = (path: string) => readFileSync(join(site.folder, path));
const page = (path: string) => read(`${path}index.html`).toString();
const data = 'questions/soaked-peas/data';

test('the page of a question tells the answer, every trial with its report, and the one not reported yet', () => {
  const html = page('questions/soaked-peas/');
  const text = html.replace(/<[^>]+>/g, '').replace(/\s+/g, ' ');
  expect(text).toContain('6 growers asked this. Results ran from 0 to 17 more per 100.');
  expect(text).toContain('A next repeat may fall anywhere from');
  const reports = [...html.matchAll(/<th scope="row"[^>]*><a href="([^"]*\/trials\/[^"]*)"/g)].map(([, address]) => address); // prettier-ignore
  expect(reports).toHaveLength(6);
  expect(html).toMatch(/Not reported yet<\/h3>[^]*peas-soaked-tunnel\/"/);
  expect(html).toMatch(/<figure id="forest"[^]*role="img" aria-label="Differences found by each trial/);
  expect(page('questions/')).toContain('href="/questions/soaked-peas/"');
});

test.each(['allotment', 'balcony', 'tunnel'])('the report of the trial %s leads to its question', (name) => {
  const html = page(`trials/peas-soaked-${name}/`);
  expect(html).toMatch(/One of 7 trials of a question:\s*<a href="\/questions\/soaked-peas\/">/);
});

test('a report of the question says that others repeated it', () => {
  expect(page('trials/peas-soaked-allotment/')).toContain('Also asked by Peas soaked overnight, in a cold porch');
});

test('the data folder holds what its checksums say, and the zip holds the folder', () => {
  const sums = read(`${data}/SHA256SUMS`).toString().trimEnd().split('\n');
  const named = sums.map((line) => line.split('  ') as [string, string]);
  for (const [digest, name] of named) {
    expect(
      createHash('sha256')
        .update(read(`${data}/${name}`))
        .digest('hex'),
      name,
    ).toBe(digest);
  }
  const zip = unzipped(read(`${data}/soaked-peas.zip`));
  expect(typeof zip === 'string' ? zip : [...zip.keys()].sort()).toEqual(
    [...named.map(([, name]) => name), 'SHA256SUMS'].sort(),
  );
});

test('R finds the figures again from the published files', async () => {
  const names = ['analysis.R', 'analysis.json', 'trials.csv'];
  const { printed, error } = await runRScript('analysis.R', Object.fromEntries(names.map((name) => [name, read(`${data}/${name}`)]))); // prettier-ignore
  expect(error).toBeNull();
  expect(printed).toContain('soaked-peas: all 62 figures agree with analysis.json.');
});
