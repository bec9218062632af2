import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checksums } from '../../src/archive/checksums.ts';
import { recheck } from '../../src/archive/recheck.ts';
import type { Recheck } from '../../src/archive/recompute.ts';
import { publishedDemo, type PublishedTrial } from '../support/published-demo.ts';

const trials = await publishedDemo();
const folderOf = ({ trial, files }: PublishedTrial): Map<string, Uint8Array> =>
  new Map(files.filter(({ name }) => name !== `${trial.id}.zip`).map(({ name, bytes }) => [name, bytes]));
const encode = (text: string) => new TextEncoder().encode(text);
const decode = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);
const digest = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

function checked(files: ReadonlyMap<string, Uint8Array>): Recheck {
  const found = recheck(files);
  if (typeof found === 'string') throw new Error(found);
  return found;
}

/** Every digest made anew, as someone would who wants a change not to be seen. */
function forged(files: Map<string, Uint8Array>): Map<string, Uint8Array> {
  const analysis = JSON.parse(decode(files.get('analysis.json')));
  for (const input of analysis.inputs) input.sha256 = digest(files.get(input.file) ?? encode(''));
  files.set('analysis.json', encode(`${JSON.stringify(analysis, null, 2)}\n`));
  files.delete('SHA256SUMS');
  const named = [...files].map(([name, bytes]) => ({ name, sha256: digest(bytes) }));
  return files.set('SHA256SUMS', encode(checksums(named)));
}

test.each(trials.map((published) => [published.trial.id, published] as const))(
  '%s: nothing differs from what was published',
  (id, published) => {
    const found = checked(folderOf(published));
    expect(found).toMatchObject({ trial: id, files: [], differences: [] });
    if (published.analysis.results.length > 0) expect(found.figures).toBeGreaterThan(30);
  },
);

const raw = trials.flatMap((published) => published.files.filter(({ kind }) => kind === 'raw').map(({ name }) => ({ published, name }))); // prettier-ignore

test('every change of a single byte of a raw file is found', () => {
  const change = fc.record({ at: fc.constantFrom(...raw), place: fc.nat(), mask: fc.integer({ min: 1, max: 255 }) });
  fc.assert(
    fc.property(change, ({ at: { published, name }, place, mask }) => {
      const files = folderOf(published);
      const bytes = Uint8Array.from(files.get(name) ?? []);
      const index = place % bytes.length;
      bytes[index] = (bytes[index] ?? 0) ^ mask;
      const found = checked(files.set(name, bytes));
      expect(found.files).toContainEqual({
        file: name,
        kind: 'altered',
        message: 'was altered: it is not the file that was published',
      });
    }),
    { seed: 20261125, numRuns: 150 },
  );
});

test('a count that was changed together with every digest still shows, in the tables and the figures', () => {
  const published = trials.find(({ trial }) => trial.id === 'peas-soaked-allotment');
  const files = folderOf(published as PublishedTrial);
  const counts = decode(files.get('counts.csv'));
  const changed = counts.replace(/(\d+)(\s*)$/, (_, number: string, end: string) => `${Number(number) - 1}${end}`);
  expect(changed).not.toBe(counts);
  const found = checked(forged(files.set('counts.csv', encode(changed))));
  expect(found.files).toContainEqual({
    file: 'counts-long.csv',
    kind: 'not-made',
    message: 'is not what the raw files give',
  });
  expect(found.differences.map(({ path }) => path).join('\n')).toMatch(
    /^results\[germination\]\.groups\[pea-2025, \w+\]\.estimate$/m,
  );
});

test('the first figure that was touched up is named, with what it was and what it is', () => {
  const files = folderOf(trials[0] as PublishedTrial);
  const analysis = JSON.parse(decode(files.get('analysis.json')));
  const { estimate } = analysis.results[0].comparisons[0];
  analysis.results[0].comparisons[0].estimate = estimate + 1e-5;
  const found = checked(forged(files.set('analysis.json', encode(JSON.stringify(analysis)))));
  expect(found.files).toEqual([]);
  expect(found.differences).toEqual([
    {
      path: 'results[germination].comparisons[carrot-2025, vermiculite].estimate',
      published: estimate + 1e-5,
      recomputed: estimate,
    },
  ]);
});

test('missing files, files put in and altered checksums are named', () => {
  const files = folderOf(trials[0] as PublishedTrial);
  const sums = decode(files.get('SHA256SUMS'));
  files.delete('counts.csv');
  files.set('key.csv', encode('sowing,treatment\n'));
  expect(checked(files).files.map(({ file, message }) => `${file} ${message}`)).toMatchInlineSnapshot(`
    [
      "counts.csv is missing",
      "key.csv was put in: it was not published with the trial",
      "trial.yaml cannot be worked out again: the trial is finished, but there is none of counts.csv, measurements.csv and weighings.csv (line 3)",
    ]
  `);
  files.delete('SHA256SUMS');
  expect(checked(files).files[0]?.message).toMatchInlineSnapshot(
    `"is missing, so that no other file can be held against its digest"`,
  );
  files.set('SHA256SUMS', encode(sums.slice(0, -1)));
  expect(checked(files).files[0]?.message).toMatchInlineSnapshot(`"was altered: a line is no digest and file name"`);
});

test('an analysis that is lost or spoilt is a difference where the checksums name it', () => {
  const files = folderOf(trials[0] as PublishedTrial);
  const spoilt = new Map(files).set('analysis.json', encode('{'));
  expect(checked(spoilt).files).toEqual([
    { file: 'analysis.json', kind: 'altered', message: 'was altered: it is not the file that was published' },
  ]);
  files.delete('analysis.json');
  expect(checked(files).files).toEqual([{ file: 'analysis.json', kind: 'missing', message: 'is missing' }]);
});

test.each([
  ['nothing', []],
  ['no analysis', [['analysis.json', '{}']]],
  ['null', [['analysis.json', 'null']]],
  ['no JSON', [['analysis.json', '<html>']]],
  ['inputs of another kind', [['analysis.json', '{"format":"fairsown-analysis/1","trial":"x","inputs":[null]}']]],
  ['a newer format', [['analysis.json', '{"format":"fairsown-analysis/2","trial":"x","inputs":[]}']]],
] as const)('%s is no published trial', (_name, entries) => {
  const found = recheck(new Map(entries.map(([name, text]) => [name, encode(text)])));
  expect(found).toEqual(expect.stringMatching(/^[^\n]+\.$/));
  if (_name === 'a newer format') expect(found).toContain('newer version (format 2)');
});
