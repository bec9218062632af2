import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readContent } from '../../src/files/read-content.ts';
import { generateSite } from './generate-site.ts';

test('a generated site is free of problems, as large as it says, and the same every time', async () => {
  const [once, again] = await Promise.all([generated(3), generated(3)]);
  expect(once.problems).toEqual([]);
  expect(once.trials.map(({ sowings, counts }) => [sowings.length, counts.length])).toEqual(Array(3).fill([32, 256]));
  expect(new Set(once.trials.map(({ inputs }) => JSON.stringify(inputs))).size).toBe(3);
  expect(again.trials).toEqual(once.trials);
});

async function generated(trials: number) {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-generated-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  generateSite(folder, trials);
  const content = await readContent(folder);
  return {
    problems: [...content.problems, ...content.trials.flatMap((trial) => trial.problems)],
    trials: content.trials.flatMap(({ trial }) => trial ?? []),
  };
}
