import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import { afterAll, expect, onTestFinished, test } from 'vitest';
import { runRecheck } from '../../src/commands/run-recheck.ts';
import { publishedDemo } from '../support/published-demo.ts';

const root = mkdtempSync(join(tmpdir(), 'fairsown-recheck-'));
afterAll(() => rmSync(root, { recursive: true }));
const published = (await publishedDemo()).find(({ trial }) => trial.id === 'peas-soaked-school');
for (const { name, bytes } of published?.files ?? []) writeFileSync(join(root, name), bytes);
const zip = join(root, 'peas-soaked-school.zip');

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  let [out, err] = ['', ''];
  const terminal = { out: (text: string) => (out += text), err: (text: string) => (err += text), terminal: false };
  const code = await runRecheck(args, terminal);
  return { code, out, err: err.replaceAll(root, '') };
}

function copy(change: (folder: string) => void): string {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-recheck-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  cpSync(root, folder, { recursive: true });
  change(folder);
  return folder;
}

test('a published folder and its zip are the same as published: 0', async () => {
  const folder = await run(root);
  expect(folder.code).toBe(0);
  expect(folder.out).toMatch(
    /^peas-soaked-school: all \d+ figures agree, and every file has its published digest\.\n$/,
  );
  expect(await run(zip)).toEqual(folder);
});

test('it runs as a script, in a folder of its own', () => {
  const script = join(import.meta.dirname, '..', '..', 'src', 'commands', 'recheck.ts');
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, '.'], { cwd: root, encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain('figures agree');
});

test('a changed count and a missing file: 1, with what differs', async () => {
  const folder = copy((copied) => {
    const counts = readFileSync(join(copied, 'counts.csv'), 'utf8');
    writeFileSync(join(copied, 'counts.csv'), counts.replace(/(\d+)(\s*)$/, (_, n: string, end: string) => `${Number(n) + 1}${end}`)); // prettier-ignore
    rmSync(join(copied, 'dictionary.csv'));
  });
  const { code, out } = await run(folder);
  expect(code).toBe(1);
  const lines = out.split('\n');
  expect(lines.slice(0, 8).join('\n')).toMatchInlineSnapshot(`
    "peas-soaked-school: not the same as published.
      counts.csv was altered: it is not the file that was published
      dictionary.csv is missing
      counts-long.csv is not what the raw files give
      counts-long-spreadsheet.csv is not what the raw files give
      results[germination].groups[pea-2025, dry].interval.lower: published 63.174625114426654, recomputed 62.21455972166915
      results[germination].groups[pea-2025, dry].interval.upper: published 92.04249214258232, recomputed 92.33801512810487
      results[germination].groups[pea-2025, soaked].count: published 54, recomputed 55"
  `);
  expect(lines.length).toBeGreaterThan(20);
});

test('a zip in which a digest, a file or the analysis was lost or touched up: 1', async () => {
  const files = Object.fromEntries((published?.files ?? []).filter(({ name }) => !name.startsWith('peas')).map(({ name, bytes }) => [name, bytes])); // prettier-ignore
  const spoilt = async (name: string, changed: Readonly<Record<string, Uint8Array>>, lost: readonly string[] = []) => {
    const kept = Object.entries({ ...files, ...changed }).filter(([file]) => !lost.includes(file));
    writeFileSync(join(root, name), zipSync(Object.fromEntries(kept)));
    const { code, out } = await run(join(root, name));
    expect(code, name).toBe(1);
    return out.split('\n')[1];
  };
  const text = (name: string) => new TextDecoder().decode(files[name]);
  const bytes = (words: string) => new TextEncoder().encode(words);
  expect([
    await spoilt('no-sums.zip', {}, ['SHA256SUMS']),
    await spoilt('no-analysis.zip', {}, ['analysis.json']),
    await spoilt('no-sowings.zip', {}, ['sowings.csv']),
    await spoilt('sums.zip', { SHA256SUMS: bytes(text('SHA256SUMS').slice(1)) }),
    await spoilt('figure.zip', { 'analysis.json': bytes(text('analysis.json').replace('"count": 54', '"count": 55')) }),
  ]).toMatchInlineSnapshot(`
    [
      "  SHA256SUMS is missing, so that no other file can be held against its digest",
      "  analysis.json is missing",
      "  sowings.csv is missing",
      "  SHA256SUMS was altered: a line is no digest and file name",
      "  analysis.json was altered: it is not the file that was published",
    ]
  `);
});

test('what is no published trial, or not safe to open: 2, one sentence each', async () => {
  writeFileSync(join(root, 'unsafe.zip'), zipSync({ '../counts.csv': new Uint8Array(1) }));
  writeFileSync(join(root, 'bomb.zip'), zipSync({ 'counts.csv': new Uint8Array(20_000_001) }));
  const linked = copy((folder) => symlinkSync('/etc/hostname', join(folder, 'events.csv')));
  const newer = copy((folder) => {
    const analysis = readFileSync(join(folder, 'analysis.json'), 'utf8');
    writeFileSync(join(folder, 'analysis.json'), analysis.replace('fairsown-analysis/1', 'fairsown-analysis/7'));
  });
  const cases = [
    join(root, 'nowhere'),
    join(root, 'counts.csv'),
    join(root, 'unsafe.zip'),
    join(root, 'bomb.zip'),
    mkdtempSync(join(root, 'empty-')),
    linked,
    newer,
  ];
  const said: string[] = [];
  for (const path of cases) {
    const { code, out, err } = await run(path);
    expect([code, out]).toEqual([2, '']);
    said.push(err.replace(/^.*?: /, ''));
  }
  expect(said.join('')).toMatchInlineSnapshot(`
    "There is no such file or folder.
    It cannot be read as a zip; it may be damaged.
    It holds a file whose name leads out of the folder; it is not unpacked.
    It unpacks to more than a trial can hold (500 files, 20 MB a file, 100 MB together).
    These are not the files of a published trial: there is no analysis.json that can be read.
    It holds a link that leads out of the folder; that is not followed.
    It was made by a newer version (format 7); this one knows format 1.
    "
  `);
});

test('usage: 2, and 0 where help was asked for', async () => {
  for (const args of [[], ['a', 'b'], ['--what']]) expect((await run(...args)).code).toBe(2);
  expect((await run('--help')).out).toContain('npm run --silent recheck');
});
