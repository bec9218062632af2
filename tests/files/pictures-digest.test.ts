import { mkdirSync, mkdtempSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { picturesDigest } from '../../src/files/pictures-digest.ts';

test('another picture, or the same under another name, is another digest', () => {
  const content = mkdtempSync(join(tmpdir(), 'fairsown-pictures-'));
  onTestFinished(() => rmSync(content, { recursive: true, force: true }));
  vi.stubEnv('FAIRSOWN_CONTENT', content);
  const photos = join(content, 'trials', 'peas', 'photos');
  mkdirSync(join(content, 'trials', 'beans'), { recursive: true });
  expect(picturesDigest('beans')).toBe(null);

  mkdirSync(photos, { recursive: true });
  const digests = [picturesDigest('peas')];
  writeFileSync(join(photos, 'a.png'), 'one');
  digests.push(picturesDigest('peas'));
  writeFileSync(join(photos, 'a.png'), 'two');
  digests.push(picturesDigest('peas'));
  renameSync(join(photos, 'a.png'), join(photos, 'b.png'));
  digests.push(picturesDigest('peas'));
  symlinkSync('b.png', join(photos, 'c.png'));
  digests.push(picturesDigest('peas'));
  expect(new Set(digests).size).toBe(5);
  expect(picturesDigest('peas')).toBe(digests.at(-1));
  vi.unstubAllEnvs();
});
