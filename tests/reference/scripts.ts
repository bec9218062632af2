import { globSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { SCRIPTS } from './run-script.ts';

/** Names of the R scripts that write a reference, in alphabetical order. */
export const scripts: readonly string[] = globSync('*.R', { cwd: SCRIPTS })
  .filter((file) => readFileSync(join(SCRIPTS, file), 'utf8').includes('source("json.R")'))
  .map((file) => basename(file, '.R'))
  .sort();
