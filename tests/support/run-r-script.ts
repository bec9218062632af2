import { startR } from './r.ts';

/**
 * Runs an R script in R's own empty folder, in which only the given files stand.
 *
 * @returns what it printed, and the error it stopped with (null where it did not)
 */
export async function runRScript(
  script: string,
  files: Readonly<Record<string, string | Uint8Array>>,
): Promise<{ readonly printed: string; readonly error: string | null }> {
  const webR = await startR();
  await webR.evalRVoid('setwd("/"); unlink("/tmp/run", recursive = TRUE); dir.create("/tmp/run"); setwd("/tmp/run")');
  for (const [name, content] of Object.entries(files)) {
    await webR.FS.writeFile(
      `/tmp/run/${name}`,
      typeof content === 'string' ? new TextEncoder().encode(content) : content,
    );
  }
  const [printed = '', error = ''] = (await webR.evalRRaw(
    `local({
      error <- ""
      printed <- capture.output(error <- tryCatch({ source("${script}", local = new.env(), encoding = "UTF-8"); "" }, error = conditionMessage))
      c(paste(printed, collapse = "\n"), error)
    })`,
    'string[]',
  )) as string[];
  return { printed, error: error === '' ? null : error };
}
