import { readdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { contentFolder } from '../files/content-folder.ts';
import { readSiteFolder } from '../files/read-site-folder.ts';
import { readTrialFolder } from '../files/read-trial-folder.ts';
import { shownPath } from '../files/shown-path.ts';
import { writeNewFile } from '../files/write-new-file.ts';
import { pdfOf } from '../print/pdf-of.ts';
import { sheetsOf } from '../print/sheets/sheets-of.ts';
import { problemText } from '../trial/problem-text.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { shown } from '../trial/text/shown.ts';
import { wordsFor } from '../wording/words-for.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run sheets -- <trial> [--content <folder>]

Writes the printable sheets of a trial (named by id or by folder) into its folder "sheets": sowing sheet, bench map,
labels, counting sheet, and, where the trial has use for them, measuring sheet, sealed key and packet labels.
A sheet that is there already stays as it is.

  --content <folder>  another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0, with 1 where the trial has errors or no sowings (nothing is written then), with 2 where it was called in
a way it does not know.
`;

/**
 * The command `sheets`: writes the printable sheets of one trial beside its data, never over a file.
 *
 * @returns the exit code: 0, 1 errors, 2 usage
 */
export async function runSheets(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const options = optionsOf(args);
  if (typeof options === 'string') return usage(options);
  const { values, positionals } = options;
  if (values.help) {
    terminal.out(USAGE);
    return 0;
  }
  const [name, ...others] = positionals;
  if (name === undefined || others.length > 0) return usage('Name one trial.');
  const content = values.content ?? contentFolder();
  const path = await folderOf(content, name);
  if (path === null) {
    const ids = await readdir(join(content, 'trials')).catch(() => []);
    return usage(`There is no trial ${shown(name)} in ${content}/trials. ${didYouMean(name, ids, 'trial')}`);
  }

  const { trial, problems } = await readTrialFolder(path);
  const { site } = await readSiteFolder(dirname(dirname(path)));
  const errors = problems.filter(({ level }) => level === 'error');
  if (trial === null || errors.length > 0) {
    terminal.err(`${errors.map(problemText).join('\n\n')}\n`);
    return 1;
  }
  if (trial.sowings.length === 0) {
    terminal.err(`${shownPath(path)} has no sowings yet, so there is nothing to print. List them in sowings.csv.\n`);
    return 1;
  }
  for (const { file, document } of sheetsOf({ trial, site, words: wordsFor(site.language) })) {
    const target = join(path, 'sheets', file);
    const written = await writeNewFile(target, pdfOf([document]).bytes);
    terminal.out(`${shownPath(target)}${written ? '' : ': was there already and stays as it is; remove it to have it made anew'}\n`); // prettier-ignore
  }
  return 0;

  function usage(message: string): 2 {
    terminal.err(`${message}\n\n${USAGE}`);
    return 2;
  }
}

function optionsOf(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { help: { type: 'boolean', default: false }, content: { type: 'string' } },
    });
  } catch (error) {
    return error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error);
  }
}

/** The folder of a trial: of that id in the content folder, else the path itself; null where neither exists. */
async function folderOf(content: string, name: string): Promise<string | null> {
  for (const path of [join(resolve(content), 'trials', name), resolve(name)]) {
    if (await readdir(path).catch(() => null)) return path;
  }
  return null;
}
