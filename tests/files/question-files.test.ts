import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { unzipped } from '../../src/archive/unzipped.ts';
import { questionFiles } from '../../src/files/question-files.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { FOUR, pool, questionOf, trialOf } from '../support/pooled-trials.ts';

const open = trialOf('e', { packet: [[1, 50]], jar: [[2, 50]] }, { status: 'growing' });
const pooled = pool([...FOUR, open]);
const site = { ...DEFAULT_SITE, base: 'https://seeds.example/garden/' };
const files = await questionFiles(questionOf([]), pooled, site);
const text = (name: string) => new TextDecoder().decode(files.find((file) => file.name === name)?.bytes);

test('holds the tables, the analysis, the script, the package, the checksums and one zip of all', () => {
  expect(files.map(({ name }) => name)).toEqual([
    'trials.csv', 'not-pooled.csv', 'analysis.json', 'analysis.R', 'datapackage.json', 'SHA256SUMS', 'jars.zip',
  ]); // prettier-ignore
  const zip = unzipped(files.at(-1)?.bytes ?? new Uint8Array());
  expect(typeof zip === 'string' ? zip : [...zip.keys()]).toEqual(files.slice(0, -1).map(({ name }) => name));
  expect(JSON.parse(text('analysis.json'))).toEqual(pooled);
});

test('the checksums are those of the files', () => {
  const lines = text('SHA256SUMS').trimEnd().split('\n');
  expect(lines).toEqual(
    files.slice(0, -2).map(({ name, bytes }) => `${createHash('sha256').update(bytes).digest('hex')}  ${name}`),
  );
});

test('the tables say what was put together and what was not', () => {
  expect(text('trials.csv').split('\n')[0]).toBe(
    'trial,title,growers,sown,from,lot,outcome,treatment,control,treatment_units,control_units,treatment_count,treatment_seeds,control_count,control_seeds,estimate,basis,lower,upper,se,weight',
  );
  expect(text('not-pooled.csv')).toBe(
    'trial,title,growers,sown,from,state,reason,found\ne,Trial e,Mara,2026-04-04,,growing,,\n',
  );
});

test('the package names page, growers, files with digests and the meaning of every column', () => {
  const descriptor = JSON.parse(text('datapackage.json'));
  expect(descriptor).toMatchObject({
    name: 'jars',
    homepage: 'https://seeds.example/garden/questions/jars/',
    contributors: [{ title: 'Mara' }],
  });
  expect(descriptor.resources.map(({ path }: { path: string }) => path)).toEqual(
    files.slice(0, 4).map(({ name }) => name),
  );
  for (const { description } of descriptor.resources[0].schema.fields) expect(description).toMatch(/\.$/);
});

test('the same question gives the same bytes', async () => {
  const again = await questionFiles(questionOf([]), pooled, site);
  expect(again.map(({ sha256 }) => sha256)).toEqual(files.map(({ sha256 }) => sha256));
});
