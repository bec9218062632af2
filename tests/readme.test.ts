import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runAnalyse } from '../src/commands/run-analyse.ts';
import { runCheck } from '../src/commands/run-check.ts';
import type { Terminal } from '../src/commands/terminal.ts';

/* What the README tells growers to paste and run does what it says there; paths and commands that are named exist. */

const root = join(import.meta.dirname, '..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');
const blocks = [...readme.matchAll(/^```(\w*)\n([^]*?)^```$/gm)].map(([, language, text = '']) => ({ language, text }));
const files = [...readme.matchAll(/^`(content\/[^`]+)` [^\n]+:\n\n```\w+\n([^]*?)^```$/gm)];
const folder = mkdtempSync(join(tmpdir(), 'fairsown-readme-'));

beforeAll(() => {
  for (const [, path = '', text = ''] of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  writeFileSync(join(folder, 'content', 'site.yaml'), readFileSync(join(root, 'content', 'site.yaml')));
});
afterAll(() => rmSync(folder, { recursive: true }));

async function printed(run: (args: readonly string[], terminal: Terminal) => Promise<number>): Promise<string> {
  let text = '';
  const terminal = { out: (line: string) => (text += line), err: (line: string) => (text += line), terminal: false };
  const code = await run(['radish-under-a-lid', '--content', join(folder, 'content')], terminal);
  expect(code, text).toBe(0);
  return text;
}

test('the first trial is five files', () => {
  expect(files.map(([, path]) => path?.split('/').at(-1))).toEqual([
    'trial.yaml',
    'people.yaml',
    'lots.yaml',
    'sowings.csv',
    'counts.csv',
  ]);
});

test('the first trial is without a problem, and check and analyse print what the README shows', async () => {
  const shown = blocks.filter(({ language }) => language === 'text').map(({ text }) => text);
  expect([await printed(runCheck), await printed(runAnalyse)]).toEqual(shown);
});

test('the word “probably” goes where the README says so', async () => {
  const line = /`(fixed_beforehand: [\d-]+)`/.exec(readme)?.[1] ?? '';
  const path = join(folder, 'content', 'trials', 'radish-under-a-lid', 'trial.yaml');
  const text = readFileSync(path, 'utf8');
  writeFileSync(path, `${text}${line}\n`);
  expect(await printed(runAnalyse)).toMatch(/: came up more\n/);
  writeFileSync(path, text);
});

test.each(['README.md', 'DEVELOPERS.md'])('every command of %s is a script of package.json', (file) => {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const named = [...readFileSync(join(root, file), 'utf8').matchAll(/npm run (?:--silent )?([\w-]+)/g)].map(
    ([, name = '']) => name,
  );
  expect(named.length).toBeGreaterThan(5);
  for (const name of named) expect(Object.keys(scripts)).toContain(name);
});

test.each(['README.md', 'DEVELOPERS.md'])('every path that %s names is there', (file) => {
  const text = readFileSync(join(root, file), 'utf8');
  const paths = [...text.matchAll(/`((?:src|tests)\/[^`…]+|content|\.gitattributes|astro\.config\.mjs)`/g)];
  const missing = paths.flatMap(([, path = '']) => (existsSync(join(root, path)) || path.startsWith('tests/output/') ? [] : path)); // prettier-ignore
  expect(missing).toEqual([]);
});
