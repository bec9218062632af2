import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { temporaryContent } from '../files/temporary-content.ts';
import { astroBuild } from '../support/build-site.ts';

/* A build that is stopped half-way: the content is as it was, and what stopped it is said. */

const disk = join(import.meta.dirname, '..', 'support', 'failing-disk.ts');

function outDir(): string {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-interrupted-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return join(folder, 'dist');
}

const filesIn = (folder: string) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .toSorted()
    .map((name) => [name, statSync(join(folder, name)).isFile() && readFileSync(join(folder, name), 'latin1')]);

/** At some step of writing, in the midst of the pages. */
const failing = (how: string) => ({ NODE_OPTIONS: `--import ${disk}`, FAILING_DISK: `100 ${how}` });

test('on a disk that fills: exit 1, a sentence with the folder, no stack trace; the content is as it was', async () => {
  const [content, dist] = [await temporaryContent(), outDir()];
  const before = filesIn(content);
  const { status, output } = astroBuild(dist, content, failing('ENOSPC'));
  expect(status).toBe(1);
  expect(output).toMatch(
    /\n\S*\/dist\S*: the disk is full \(ENOSPC\)\. The site in \S*\/dist is not whole; build it again\.\n$/,
  );
  expect(output).not.toMatch(/^\s+at /m);
  expect(filesIn(content)).toEqual(before);
});

test('killed: the content is as it was, and the next build writes the whole site', async () => {
  const [content, dist] = [await temporaryContent(), outDir()];
  const before = filesIn(content);
  expect(astroBuild(dist, content, failing('KILL')).status).toBe(null);
  expect(filesIn(content)).toEqual(before);
  const { status, output } = astroBuild(dist, content);
  expect(status, output).toBe(0);
  expect(filesIn(content)).toEqual(before);
  expect(readFileSync(join(dist, 'trials/leek/index.html'), 'utf8')).toContain('</html>');
  expect(readdirSync(dist).filter((name) => name.startsWith('.unfinished'))).toEqual([]);
});

test('where a file stands in place of the folder: one sentence before anything is built', async () => {
  const [content, dist] = [await temporaryContent(), outDir()];
  writeFileSync(dist, 'a file');
  const { status, output } = astroBuild(dist, content);
  expect(status).toBe(1);
  expect(output).toMatch(
    /^\S*\/dist could not be written: there is a file where a folder should be \(ENOTDIR\)\. Nothing that was there has changed\.\n$/,
  );
  expect(readFileSync(dist, 'utf8')).toBe('a file');
});
