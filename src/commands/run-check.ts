import { readFile } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { contentFolder } from '../files/content-folder.ts';
import { readContent, type Content } from '../files/read-content.ts';
import { readTrialFolder, type TrialFolder } from '../files/read-trial-folder.ts';
import { shownPath } from '../files/shown-path.ts';
import { writeRecord } from '../files/write-record.ts';
import { compareTypings } from '../trial/compare-typings.ts';
import type { Problem } from '../trial/problem.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { shown } from '../trial/text/shown.ts';
import { checkReport } from './check-report.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run --silent check -- [<trial>…] [--strict] [--json] [--against <file>]
                               [--record] [--content <folder>]

Reads every file of the content folder (or of the trials named, by id or folder) and says what is wrong.

  --strict            warnings count as errors
  --json              prints fairsown-check/1 in place of text
  --against <file>    also compares counts.csv of the one trial named with a second typing of the same sheets
  --record            writes into published.yaml what is published now; only where nothing is wrong
  --content <folder>  another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0 where nothing is wrong, 1 where there are errors (or typings that differ), 2 where it was called in
a way it does not know.
`;

/**
 * The command `check`: prints every problem of every file.
 *
 * @param today ISO date that `--record` writes down
 * @returns the exit code: 0, 1 errors (with --strict also warnings), 2 usage
 */
export async function runCheck(
  args: readonly string[],
  terminal: Terminal,
  today = () => new Date().toISOString().slice(0, 10),
): Promise<0 | 1 | 2> {
  const options = optionsOf(args);
  if (typeof options === 'string') return usage(options);
  const { values, positionals } = options;
  if (values.help) {
    terminal.out(USAGE);
    return 0;
  }

  if (values.record && positionals.length > 0) return usage('--record is of all trials; name none.');
  const path = values.content ?? contentFolder();
  const content = await readContent(path, (trial, index, total) => {
    if (terminal.terminal) terminal.err(`\r\u001b[K${index + 1} of ${total}: ${trial}`);
  });
  if (terminal.terminal) terminal.err('\r\u001b[K');
  const [lost] = content.problems;
  if (lost?.rule === 'folder-missing') return usage(`${lost.file}: ${lost.message}.`);
  const trials = await chosenTrials(content, positionals);
  if (typeof trials === 'string') return usage(trials);

  const typings = values.against === undefined ? null : await typingsOf(trials, content, values.against);
  if (typeof typings === 'string') return usage(typings);
  const ofTrials = trials.flatMap((trial) => trial.problems);
  const ofRepeats = content.repeats.flatMap((repeat) => repeat.problems);
  const problems: Problem[] = [...content.problems, ...ofRepeats, ...ofTrials, ...(typings?.problems ?? [])];
  const broken = trials.filter(({ problems: found }) => found.some(({ level }) => level === 'error'));
  const leftOut = content.site.onProblem === 'leave-out' ? broken.map(({ id }) => id) : [];
  const report = checkReport(problems, trials.length, leftOut);
  terminal.out(values.json ? `${JSON.stringify(report.json, null, 2)}\n` : report.text + (typings?.closing ?? ''));
  const { errors, warnings } = report.json;
  if (values.record && errors === 0) {
    const recorded = await writeRecord(path, content.record, today());
    if (!values.json) terminal.out(`Recorded in published.yaml: ${recorded.join(', ') || 'nothing new'}.\n`);
  }
  return errors > 0 || (values.strict && warnings > 0) ? 1 : 0;

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
      options: {
        strict: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', default: false },
        record: { type: 'boolean', default: false },
        against: { type: 'string' },
        content: { type: 'string' },
      },
    });
  } catch (error) {
    return error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error);
  }
}

/** How counts.csv of the one trial differs from a second typing; a text says why they cannot be compared. */
async function typingsOf(
  trials: readonly TrialFolder[],
  { site }: Content,
  file: string,
): Promise<{ readonly problems: readonly Problem[]; readonly closing: string } | string> {
  const [trial, ...others] = trials;
  if (trial === undefined || others.length > 0) return '--against needs one trial, named before it.';
  const bytes = await readFile(file).catch(() => null);
  if (bytes === null) return `There is no file ${shown(file)} that can be read.`;
  const second = { folder: shownPath(dirname(resolve(file))), name: basename(file), bytes };
  const { problems, compared } = compareTypings({ folder: trial.folder, files: trial.files, site }, second);
  const differ = problems.filter(({ rule }) => rule === 'typings-differ').length;
  return { problems, closing: `${compared} counts compared with ${file}: ${differ === 0 ? 'none' : differ} differ.\n` };
}

/** The trials named, by id or by folder, wherever it is; all where none is. A text says which is not there. */
async function chosenTrials(content: Content, names: readonly string[]): Promise<readonly TrialFolder[] | string> {
  if (names.length === 0) return content.trials;
  const chosen: TrialFolder[] = [];
  for (const name of names) {
    const known = content.trials.find(({ id, folder }) => id === name || resolve(folder) === resolve(name));
    const trial = known ?? (await readTrialFolder(name));
    if (trial.problems[0]?.rule === 'folder-missing') {
      const ids = content.trials.map(({ id }) => id);
      return `There is no trial ${shown(name)} in ${content.folder}/trials. ${didYouMean(name, ids, 'trial')}`;
    }
    chosen.push(trial);
  }
  return chosen;
}
