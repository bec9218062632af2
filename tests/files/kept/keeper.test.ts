import { cpSync, globSync, mkdirSync, mkdtempSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { keeper } from '../../../src/files/kept/keeper.ts';
import { makerDigest } from '../../../src/files/kept/maker-digest.ts';
import { prune } from '../../../src/files/kept/prune.ts';
import { readKept } from '../../../src/files/kept/read-kept.ts';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'fairsown-kept-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const files = () => globSync('*/*/*', { cwd: folder }).map((file) => join(folder, file));

/** A maker that counts how often it was asked. */
function counting(text: string) {
  const made = {
    times: 0,
    make: async () => {
      made.times += 1;
      return text;
    },
  };
  return made;
}

test('the same inputs of the same maker are made once', async () => {
  const one = counting('a chart');
  expect(await keeper(folder, 'maker').text('chart', 'inputs', one.make)).toBe('a chart');
  expect(await keeper(folder, 'maker').text('chart', 'inputs', one.make)).toBe('a chart');
  expect(one.times).toBe(1);
});

test.each([
  ['another input', 'maker', 'chart', 'inputs!'],
  ['another kind', 'maker', 'summary', 'inputs'],
  ['another maker', 'maker 2', 'chart', 'inputs'],
])('%s is made anew', async (_, maker, kind, inputs) => {
  await keeper(folder, 'maker').text('chart', 'inputs', counting('old').make);
  expect(await keeper(folder, maker).text(kind, inputs, counting('new').make)).toBe('new');
});

test('what was cut short, changed or emptied on the disk is made anew', async () => {
  const kept = keeper(folder, 'maker');
  for (const spoil of [
    (file: string) => readFileSync(file).subarray(0, 70),
    () => Buffer.from('x'.repeat(80)),
    () => Buffer.alloc(0),
  ]) {
    await kept.text('chart', 'inputs', counting('a chart').make);
    const [file = ''] = files();
    writeFileSync(file, spoil(file));
    const again = counting('a chart');
    expect(await kept.text('chart', 'inputs', again.make)).toBe('a chart');
    expect(again.times).toBe(1);
  }
});

test('two builds at once both have it whole', async () => {
  const [a, b] = [keeper(folder, 'maker'), keeper(folder, 'maker')];
  const slow = async () => {
    await new Promise((resolve) => setTimeout(resolve, 20));
    return 'a chart';
  };
  expect(await Promise.all([a.text('chart', 'i', slow), b.text('chart', 'i', slow)])).toEqual(['a chart', 'a chart']);
  expect(files()).toHaveLength(1);
});

test('where nothing can be kept, it is made', async () => {
  const blocked = join(folder, 'file');
  writeFileSync(blocked, '');
  expect(await keeper(join(blocked, 'under'), 'maker').text('chart', 'i', counting('a chart').make)).toBe('a chart');
});

test('the file in which something is kept holds it whole, and is written once', async () => {
  const kept = keeper(folder, 'maker');
  const one = counting('a trial');
  const file = await kept.file('trial', 'inputs', one.make);
  expect(await kept.file('trial', 'inputs', one.make)).toBe(file);
  expect(one.times).toBe(1);
  expect(new TextDecoder().decode(readKept(file) ?? undefined)).toBe('a trial');
  writeFileSync(join(folder, 'blocked'), '');
  await expect(keeper(join(folder, 'blocked'), 'maker').file('trial', 'i', one.make)).rejects.toThrow('ENOTDIR');
});

test('a maker that fails keeps nothing', async () => {
  await expect(keeper(folder, 'maker').text('chart', 'i', () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(files()).toEqual([]);
});

test('what was used longest ago goes first, down to the bound', async () => {
  const kept = keeper(folder, 'maker');
  for (const [index, input] of ['a', 'b', 'c'].entries()) {
    await kept.text('chart', input, async () => input.repeat(1000));
    const newest = files().find((file) => readFileSync(file, 'latin1').endsWith(input)) ?? '';
    utimesSync(newest, 1000 + index, 1000 + index); // long ago
  }
  prune(folder, 2500);
  expect(
    files()
      .map((file) => readFileSync(file, 'latin1').at(-1))
      .toSorted(),
  ).toEqual(['b', 'c']);
  await kept.text('chart', 'b', () => Promise.reject(new Error('it is kept')));
  prune(folder, 1500);
  expect(files().map((file) => readFileSync(file, 'latin1').at(-1))).toEqual(['b']);
});

describe('the digest of the maker', () => {
  const root = () => join(folder, 'project');
  const write = (file: string, text: string) => {
    mkdirSync(join(root(), file, '..'), { recursive: true });
    writeFileSync(join(root(), file), text);
  };
  beforeEach(() => {
    write('src/trial/schema/site.ts', 'export const schema = 1;');
    write('src/archive/analysis.R', 'x <- 1');
    write('package-lock.json', '{}');
    write('node_modules/.package-lock.json', '{"vega":"6.4.0"}');
    write('node_modules/@expo-google-fonts/serif/400/Serif.ttf', 'glyphs');
    write('content/trials/a/counts.csv', 'sowing');
  });

  test.each([
    ['the configuration', 'astro.config.mjs', '{}'],
    ['a schema', 'src/trial/schema/site.ts', 'export const schema = 2;'],
    ['a script', 'src/archive/analysis.R', 'x <- 2'],
    ['a new file', 'src/charts/new.ts', ''],
    ['a font', 'node_modules/@expo-google-fonts/serif/400/Serif.ttf', 'other glyphs'],
    ['the version of a package', 'node_modules/.package-lock.json', '{"vega":"6.4.1"}'],
  ])('changes with %s', (_, file, text) => {
    const before = makerDigest(root());
    write(file, text);
    expect(makerDigest(root())).not.toBe(before);
  });

  test('is the same in another folder, and whatever the content', () => {
    const before = makerDigest(root());
    write('content/trials/a/counts.csv', 'sowing,day');
    cpSync(root(), join(folder, 'elsewhere'), { recursive: true });
    expect(makerDigest(join(folder, 'elsewhere'))).toBe(before);
  });
});
