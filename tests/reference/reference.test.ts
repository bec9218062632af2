import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runScript, SCRIPTS } from './run-script.ts';
import { scripts } from './scripts.ts';

test.each(scripts)('%s.json is what its R script writes', async (name) => {
  const kept = JSON.parse(readFileSync(join(SCRIPTS, `${name}.json`), 'utf8'));
  expect(kept.source).toMatch(/^R version 4\./);
  expect(JSON.parse(await runScript(name))).toEqual(kept);
});
