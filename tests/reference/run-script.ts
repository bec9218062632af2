import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { startR } from '../support/r.ts';

/** Folder of the R scripts that write references, and of what they wrote. */
export const SCRIPTS = join(import.meta.dirname, 'r');

/** Runs an R script of `SCRIPTS` in webr and gives the text of the JSON file that it writes. */
export async function runScript(name: string): Promise<string> {
  const webR = await startR();
  for (const file of globSync('*.R', { cwd: SCRIPTS })) {
    await webR.FS.writeFile(`/tmp/${file}`, readFileSync(join(SCRIPTS, file)));
  }
  await webR.evalRVoid(`setwd("/tmp"); source("${name}.R", local = new.env())`);
  return new TextDecoder().decode(await webR.FS.readFile(`/tmp/${name}.json`));
}
