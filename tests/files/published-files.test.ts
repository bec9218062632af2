import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { publishedFiles } from '../../src/files/published-files.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { makeAnalysis } from '../support/make-result.ts';
import { makeLot, makeTrial } from '../support/make-trial.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

// SHA-256 of the three bytes "abc": FIPS 180-4 example.
const ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const trial = makeTrial({
  inputs: [{ file: 'counts.csv', sha256: ABC, bytes: 3 }],
  lots: [{ ...makeLot('leek'), seedsPerGram: 380, supplier: 'own: seed' }],
});

test('raw files are published byte for byte with their digest, nothing else of the folder', async () => {
  writeFileSync(join(folder, 'counts.csv'), 'abc');
  writeFileSync(join(folder, 'private.txt'), 'a phone number');
  const files = await publishedFiles(folder, trial, makeAnalysis(), DEFAULT_SITE);
  expect(files.map(({ name }) => name)).toEqual([
    'counts.csv',
    'lots.yaml',
    'people.yaml',
    'dictionary.csv',
    'dictionary-spreadsheet.csv',
    'miappe.csv',
    'analysis.R',
    'analysis.json',
    'CITATION.cff',
    'citation.bib',
    'citation.csl.json',
    'datapackage.json',
    'SHA256SUMS',
    'test.zip',
  ]);
  expect(Buffer.from(files[0]?.bytes ?? []).toString()).toBe('abc');
  expect(files[0]?.sha256).toBe(ABC);
});

test('lots and people are cut down to the trial, in the form in which growers write them', async () => {
  writeFileSync(join(folder, 'counts.csv'), 'abc');
  const files = await publishedFiles(folder, trial, makeAnalysis(), DEFAULT_SITE);
  const text = (name: string) => Buffer.from(files.find((file) => file.name === name)?.bytes ?? []).toString();
  expect(text('lots.yaml')).toMatchInlineSnapshot(`
    "leek:
      crop: leek
      species: Allium porrum
      supplier: "own: seed"
      seeds_per_gram: 380
    "
  `);
  expect(text('people.yaml')).toMatchInlineSnapshot(`
    "mara:
      name: Mara
    "
  `);
});

test('a file that changed since it was analysed is not published', async () => {
  writeFileSync(join(folder, 'counts.csv'), 'abd');
  await expect(publishedFiles(folder, trial, makeAnalysis(), DEFAULT_SITE)).rejects.toThrow(
    'counts.csv of test changed',
  );
});

test('people with a role but no authorship are published too, from the site and from the trial itself', async () => {
  writeFileSync(join(folder, 'counts.csv'), 'abc');
  writeFileSync(join(folder, 'people.yaml'), 'jo:\n  name: Jo of the trial\n');
  const person = { id: 'lu', name: 'Lu of the site', affiliation: null, orcid: null, url: null };
  const helped = {
    ...trial,
    roles: { mara: ['planned'], jo: ['counted'], lu: ['sowed'] },
    inputs: [...trial.inputs, { file: 'people.yaml', sha256: '', bytes: 1 }],
  };
  const site = { ...DEFAULT_SITE, people: { lu: person, nobody: { ...person, id: 'nobody' } } };
  const files = await publishedFiles(folder, helped, makeAnalysis(), site);
  const people = files.find(({ name }) => name === 'people.yaml');
  expect(Buffer.from(people?.bytes ?? []).toString()).toMatchInlineSnapshot(`
    "mara:
      name: Mara
    jo:
      name: Jo of the trial
    lu:
      name: Lu of the site
    "
  `);
});
