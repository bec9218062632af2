import { parseArgs } from 'node:util';
import { resolve } from 'node:path';
import { contentFolder } from '../files/content-folder.ts';
import { readContent, type Content } from '../files/read-content.ts';
import { readTrialFolder, type TrialFolder } from '../files/read-trial-folder.ts';
import type { Problem } from '../trial/problem.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { shown } from '../trial/text/shown.ts';
import { checkReport } from './check-report.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run --silent check -- [<trial>…] [--strict] [--json] [--content <folder>]

Reads every file of the content folder (or of the trials named, by id or folder) and says what is wrong.

  --strict            warnings count as errors
  --json              prints fairsown-check/1 in place of text
  --content <folder>  another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0 where nothing is wrong, 1 where there are errors, 2 where it was called in a way it does not know.
`;

/**
 * The command `check`: prints every problem of every file.
 *
 * @returns the exit code: 0, 1 errors (with --strict also warnings), 2 usage
 */
export async function runCheck(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const options = optionsOf(args);
  if (typeof options === 'string') return usage(options);
  const { values, positionals } = options;
  if (values.help) {
    terminal.out(USAGE);
    return 0;
  }

  const content = await readContent(values.content ?? contentFolder(), (trial, index, total) => {
    if (terminal.terminal) terminal.err(`\r\u001b[K${index + 1} of ${total}: ${trial}`);
  });
  if (terminal.terminal) terminal.err('\r\u001b[K');
  const [lost] = content.problems;
  if (lost?.rule === 'folder-missing') return usage(`${lost.file}: ${lost.message}.`);
  const trials = await chosenTrials(content, positionals);
  if (typeof trials === 'string') return usage(trials);

  const problems: Problem[] = [...content.problems, ...trials.flatMap((trial) => trial.problems)];
  const report = checkReport(problems, trials.length);
  terminal.out(values.json ? `${JSON.stringify(report.json, null, 2)}\n` : report.text);
  const { errors, warnings } = report.json;
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
        content: { type: 'string' },
      },
    });
  } catch (error) {
    return error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error);
  }
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
