import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runSheets } from '../../src/commands/run-sheets.ts';
import { temporaryContent } from '../files/temporary-content.ts';

async function run(...args: readonly string[]) {
  const told = { out: '', err: '' };
  const code = await runSheets(args, {
    out: (text) => (told.out += text),
    err: (text) => (told.err += text),
    terminal: false,
  });
  return { code, ...told };
}

test('writes the sheets of a trial beside its data', async () => {
  const content = await temporaryContent();
  const { code, out, err } = await run('leek', '--content', content);
  const folder = join(content, 'trials', 'leek', 'sheets');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const files = await readdir(folder);
  expect(files).toEqual(
    expect.arrayContaining(['bench-map.pdf', 'counting-sheet.pdf', 'labels.pdf', 'sowing-sheet.pdf']),
  );
  for (const file of files) {
    expect(out).toContain(`sheets/${file}\n`);
    expect((await readFile(join(folder, file))).subarray(0, 5).toString()).toBe('%PDF-');
  }
});

test('finds a trial by its folder as well', async () => {
  const content = await temporaryContent();
  expect((await run(join(content, 'trials', 'leek'))).code).toBe(0);
});

test('never writes over a file: what is there stays, what is missing is made', async () => {
  const content = await temporaryContent();
  const folder = join(content, 'trials', 'leek', 'sheets');
  await mkdir(folder);
  await writeFile(join(folder, 'labels.pdf'), 'my own');
  const { code, out } = await run('leek', '--content', content);
  expect(code).toBe(0);
  expect(out).toContain('labels.pdf: was there already and stays as it is');
  expect(await readFile(join(folder, 'labels.pdf'), 'utf8')).toBe('my own');
  expect(await readdir(folder)).toContain('counting-sheet.pdf');
});

test('a trial with errors gets no sheets', async () => {
  const content = await temporaryContent({ 'trials/leek/sowings.csv': 'sowing,lot\n' });
  const { code, out, err } = await run('leek', '--content', content);
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(err).toContain('sowings.csv');
  expect(await readdir(join(content, 'trials', 'leek'))).not.toContain('sheets');
});

test.each([
  [[], 'Name one trial.'],
  [['leek', 'onion'], 'Name one trial.'],
  [['lek'], 'There is no trial "lek"'],
  [['leek', '--nonsense'], '--nonsense'],
])('%j is not how it is called', async (args, message) => {
  const { code, err } = await run(...args, '--content', await temporaryContent());
  expect(code).toBe(2);
  expect(err).toContain(message);
  expect(err).toContain('npm run sheets -- <trial>');
});

test('--help says how to call it', async () => {
  const { code, out } = await run('--help');
  expect(code).toBe(0);
  expect(out).toContain('npm run sheets -- <trial>');
});
