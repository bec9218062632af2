/** Writes every reference anew: `node tests/reference/make.ts`. Needs no R; webr brings it. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runScript, SCRIPTS } from './run-script.ts';
import { scripts } from './scripts.ts';

for (const name of scripts) {
  writeFileSync(join(SCRIPTS, `${name}.json`), await runScript(name));
  console.log(`tests/reference/r/${name}.json`);
}
process.exit(0);
