import { spawnSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { writeNewFile } from '../../src/files/write-new-file.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

async function folder(): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'fairsown-'));
  onTestFinished(() => rm(made, { recursive: true }));
  return made;
}

test('a file is written with the folders above it, and never over another', async () => {
  const file = join(await folder(), 'a', 'b', 'c.txt');
  expect(await writeNewFile(file, bytes('first'))).toBe(true);
  expect(await writeNewFile(file, bytes('second'))).toBe(false);
  expect(await readFile(file, 'utf8')).toBe('first');
});

test('a link is not followed, even one that leads nowhere', async () => {
  const at = await folder();
  await symlink(join(at, 'elsewhere'), join(at, 'link'));
  expect(await writeNewFile(join(at, 'link'), bytes('x'))).toBe(false);
});

test('what a killed command left beside it is cleared up; what one still works in stays', async () => {
  const at = await folder();
  const { pid } = spawnSync(process.execPath, ['--version']);
  for (const name of [`.unfinished-${pid}-1`, `.unfinished-${process.pid}-1`, '.unfinished-mine'])
    await mkdir(join(at, name));
  expect(await writeNewFile(join(at, 'a.txt'), bytes('x'))).toBe(true);
  expect(await readdir(at)).toEqual([`.unfinished-${process.pid}-1`, '.unfinished-mine', 'a.txt']);
});
