import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runCheck } from '../../src/commands/run-check.ts';
import { temporaryContent } from './temporary-content.ts';

async function check(folder: string, today: string, ...args: readonly string[]) {
  let [out, err] = ['', ''];
  const terminal = { out: (text: string) => (out += text), err: (text: string) => (err += text), terminal: false };
  const code = await runCheck([...args, '--content', folder], terminal, () => today);
  return { code, out, err };
}
const record = (folder: string) => readFile(join(folder, 'published.yaml'), 'utf8');
const change = async (folder: string, file: string, from: string | RegExp, to: string) => {
  const path = join(folder, 'trials/leek', file);
  await writeFile(path, (await readFile(path, 'utf8')).replace(from, to));
};

test('a change of a published trial of which nothing is said is a warning until it is said', async () => {
  const folder = await temporaryContent();
  expect((await check(folder, '2026-07-01')).out).not.toContain('Recorded');
  await expect(record(folder)).rejects.toThrow();

  expect((await check(folder, '2026-07-01', '--record')).out).toMatch(/Recorded in published\.yaml: leek\.\n$/);
  const first = await record(folder);
  expect(first).toMatch(/^#.*\nleek:\n {2}date: 2026-07-01\n {2}digest: [0-9a-f]{64}\n {2}version: 1\n$/);
  expect((await check(folder, '2026-07-02', '--record')).out).toMatch(/nothing new\.\n$/);
  expect(await record(folder)).toBe(first);

  await change(folder, 'counts.csv', 's04,8,44', 's04,8,43');
  const changed = await check(folder, '2026-08-01', '--record', '--strict');
  expect(changed.code).toBe(1);
  expect(changed.out).toContain(
    'changes: the files of this trial are not those that were published (recorded on 2026-07-01), and "changes" says nothing new\n' +
      '  warning: Add an entry under "changes" with date, what and why; then run npm run check -- --record.',
  );
  expect(await record(folder)).toBe(first);

  await change(folder, 'trial.yaml', /$/, 'changes:\n  - date: 2026-08-01\n    what: a count of tray 4 mended\n');
  expect((await check(folder, '2026-08-01', '--record', '--strict')).code).toBe(0);
  expect(await record(folder)).toMatch(/date: 2026-08-01\n {2}digest: [0-9a-f]{64}\n {2}version: 2\n$/);
});

test('a trial that is growing changes with every count, and is not recorded', async () => {
  const folder = await temporaryContent();
  await change(folder, 'trial.yaml', 'finished', 'growing');
  expect((await check(folder, '2026-07-01', '--record')).out).toMatch(/nothing new\.\n$/);
  await expect(record(folder)).rejects.toThrow();
});

test('nothing is recorded where there are errors; a spoilt published.yaml is one, with its place', async () => {
  const folder = await temporaryContent({ 'published.yaml': 'leek:\n  date: 1/7/26\n  digest: x\n  version: 1\n' });
  const { code, out } = await check(folder, '2026-07-01', '--record');
  expect(code).toBe(1);
  expect(out).toMatch(/published\.yaml:2:\d+ leek\.date: /);
  expect(out).toMatch(/published\.yaml:3:\d+ leek\.digest: expected a SHA-256 digest/);
  expect(out).not.toContain('Recorded');
  expect(await check(folder, '2026-07-01', 'leek', '--record')).toMatchObject({
    code: 2,
    err: expect.stringMatching(/^--record is of all trials; name none\.\n/),
  });
});
