import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import { SITE_FILES, TRIAL_FILES, type TextFiles } from '../trial/trial-files.ts';

/** A content folder with one trial, `leek`, and these files besides; gone after the test. Null takes a file out. */
export async function temporaryContent(changed: TextFiles = {}): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'fairsown-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const trial = Object.entries(TRIAL_FILES).map(([name, text]) => [`trials/leek/${name}`, text]);
  const files: TextFiles = { ...SITE_FILES, ...Object.fromEntries(trial), ...changed };
  for (const [name, text] of Object.entries(files)) {
    if (text === null) continue;
    await mkdir(dirname(join(folder, name)), { recursive: true });
    await writeFile(join(folder, name), text);
  }
  return folder;
}
