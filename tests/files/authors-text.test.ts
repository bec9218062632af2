import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { authorsText } from '../../src/files/authors-text.ts';
import { compiledText } from '../../src/files/compiled-text.ts';

let content: string;
beforeAll(() => {
  content = mkdtempSync(join(tmpdir(), 'fairsown-text-'));
  vi.stubEnv('FAIRSOWN_CONTENT', content);
});
afterAll(() => {
  vi.unstubAllEnvs();
  rmSync(content, { recursive: true, force: true });
});

function write(trial: string, file: string, text: string | Uint8Array): void {
  mkdirSync(join(content, 'trials', trial), { recursive: true });
  writeFileSync(join(content, 'trials', trial, file), text);
}

/** All that a page would show, as it is handed to Astro. */
async function shown(trial: string): Promise<string> {
  const text = authorsText(trial);
  if (!text) throw new Error('no text');
  const content = await compiledText(text, '/');
  return JSON.stringify(content({ components: { Caveats: 'caveats' } }));
}

test('a text is read in the letters that it was saved in', () => {
  write('leek', 'report.md', Buffer.from('Es war kühl.', 'latin1'));
  write('peas', 'report.mdx', '\uFEFFEs war kühl.');
  mkdirSync(join(content, 'trials', 'none', 'report.md'), { recursive: true }); // a folder of that name
  write('none', 'Report.mdx', 'On some disks the name is the same.');
  expect(authorsText('leek')).toEqual({ trial: 'leek', file: 'report.md', text: 'Es war kühl.' });
  expect(authorsText('peas')).toEqual({ trial: 'peas', file: 'report.mdx', text: 'Es war kühl.' });
  expect(authorsText('none')).toBeNull();
});

test('the ending chooses between Markdown and MDX', async () => {
  write('plain', 'report.md', 'A brace { is a brace.');
  write('rich', 'report.mdx', '<Caveats />');
  expect(await shown('plain')).toContain('A brace { is a brace.');
  expect(await shown('rich')).toContain('"type":"caveats"');
});

test('a column of a table is set right without a style, which pages may not have', async () => {
  write('table', 'report.md', '| seeds |\n| ---: |\n| 50 |');
  const table = await shown('table');
  expect(table).toContain('"align":"right"');
  expect(table).not.toContain('"style"');
});

test('a text with code in it is not compiled', async () => {
  write('code', 'report.mdx', 'Fine.\n\n{1 + 1}');
  await expect(shown('code')).rejects.toThrow('report.mdx:3:1: found the expression {"1 + 1"}');
});
