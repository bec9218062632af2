import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { SITE_FOLDER, writeBeside } from '../../src/files/write-beside.ts';

test('what was there is written over, whether it was longer, shorter or the same', () => {
  const site = mkdtempSync(join(tmpdir(), 'fairsown-beside-'));
  onTestFinished(() => rmSync(site, { recursive: true, force: true }));
  vi.stubEnv(SITE_FOLDER, site);
  const write = (text: string) => writeBeside('a/b', [{ name: 'x.csv', bytes: Buffer.from(text) }]);
  for (const text of ['day,count\n1,2\n', 'day,count\n1,22\n', 'day\n', '', '', 'day\n', 'dax\n']) {
    const file = join(site, 'a', 'b', 'x.csv');
    if (existsSync(file)) utimesSync(file, 0, 0);
    write(text);
    expect(statSync(file).mtimeMs).toBeGreaterThan(0); // one of this build, whatever was there
    expect(readFileSync(join(site, 'a', 'b', 'x.csv'), 'utf8')).toBe(text);
  }
  vi.unstubAllEnvs();
});

test('what the disk refuses is said without a stack', () => {
  const site = mkdtempSync(join(tmpdir(), 'fairsown-beside-'));
  onTestFinished(() => rmSync(site, { recursive: true, force: true }));
  vi.stubEnv(SITE_FOLDER, site);
  writeFileSync(join(site, 'a'), 'a file where the folder should be');
  const refused = (() => {
    try {
      writeBeside('a', [{ name: 'x', bytes: new Uint8Array() }]);
    } catch (error) {
      return error as Error;
    }
    return null;
  })();
  expect(refused?.message).toMatch(/EEXIST|ENOTDIR/);
  expect(refused?.stack).toBe(refused?.message);
  vi.unstubAllEnvs();
});
