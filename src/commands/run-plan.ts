import { readFile } from 'node:fs/promises';
import { dirname, join, resolve, sep } from 'node:path';
import { plannedDesign } from '../analysis/plan/planned-design.ts';
import { plannedFiles } from '../archive/planned-files.ts';
import { contentFolder } from '../files/content-folder.ts';
import { readSiteFolder } from '../files/read-site-folder.ts';
import { shownPath } from '../files/shown-path.ts';
import { writePlan } from '../files/write-plan.ts';
import { pdfOf } from '../print/pdf-of.ts';
import { sealedKey } from '../print/sheets/sealed-key.ts';
import type { Sheet } from '../print/sheets/sheet.ts';
import { sheetsOf } from '../print/sheets/sheets-of.ts';
import { FileProblems } from '../trial/file-problems.ts';
import type { Problem } from '../trial/problem.ts';
import { problemText } from '../trial/problem-text.ts';
import { readTrial } from '../trial/read-trial.ts';
import { readPlanRequest } from '../trial/request/read-plan-request.ts';
import { shown } from '../trial/text/shown.ts';
import { readYaml } from '../trial/yaml/read-yaml.ts';
import { wordsFor } from '../wording/words-for.ts';
import { askPlan, type Ask } from './ask-plan.ts';
import { planOptions } from './plan-options.ts';
import { planTold } from './plan-told.ts';
import { planValue } from './plan-value.ts';
import type { Terminal } from './terminal.ts';
import { wrapped } from './wrapped.ts';

const USAGE = `npm run plan -- [<trial>] [--from <file>] [options]

Plans a trial and writes its folder: trial.yaml, the frozen plan, sowings in places drawn by lot, tables to fill in and
sheets to print. Asks for what is not given where a person sits at the terminal. Nothing is ever written over.

  --from <file>         what is planned, in YAML: the keys of trial.yaml and trial, each, seeds, plants, base, trays,
                        seed, new_lots, new_people; options go before it
  --title, --question   --varies soak|drying|storage|light|temperature|medium|dressing|age|other
  --control <label>     --treatment <label>, once for each
  --lot <id>            once for each; a new one with --crop and --species
  --author <id>         a new one with --name
  --container, --block, --germinated <text>     --treated each-sowing|in-batches|at-once
  --blind yes|no        --days 5,8,11,14        --day <the one compared; the last where not given>
  --matters <seedlings of 100>                  --base <of 100>     --trays even|usual|uneven
  --each <sowings of each treatment>            --seeds <in each>; both are proposed where not given
  --sown <date>         --seed <text>: draws the same layout again
  --key <file>          where the key of a blind trial is kept; keys/<trial>/key.csv beside the content folder otherwise
  --content <folder>    another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0 where the trial was written, 1 where the plan was refused or given up, 2 where it was called in a way it
does not know.
`;

/** What a plan takes from the world around it. */
export interface PlanWorld {
  /** ISO date: the plan is fixed on it. */
  readonly today: string;
  /** A random seed nobody can guess, for the layout. */
  readonly seed: string;
  /** Null where nobody sits at the terminal. */
  readonly ask: Ask | null;
}

/**
 * The command `plan`.
 *
 * @returns the exit code: 0 written, 1 refused, 2 usage
 */
export async function runPlan(args: readonly string[], terminal: Terminal, world: PlanWorld): Promise<0 | 1 | 2> {
  const given = planOptions(args);
  if (typeof given === 'string') return usage(given);
  if (given.values.help) {
    terminal.out(USAGE);
    return 0;
  }
  const { from } = given.values;
  if (from === undefined && given.trial === null && world.ask === null) return usage('Name the trial, or a file with --from.'); // prettier-ignore
  const content = resolve(given.values.content ?? contentFolder());
  const { site, problems: ofSite } = await readSiteFolder(content);
  if (refused(ofSite)) return 1;
  const words = wordsFor(site.language);

  const report = new FileProblems(from ?? 'npm run plan');
  const bytes = from === undefined ? null : await readFile(from).catch(() => null);
  if (from !== undefined && bytes === null) return usage(`There is no file ${shown(from)} that can be read.`);
  const yaml = bytes && readYaml(bytes, report);
  const answers = world.ask !== null && from === undefined ? await askPlan(given, world.ask, site, words) : given;
  const options = planValue(answers);
  const value = { ...(yaml?.value as Record<string, unknown> | undefined), ...options };
  const place = (path: readonly PropertyKey[]) =>
    yaml && !(String(path[0]) in options) ? yaml.place(path) : { line: null, column: null, cell: null, field: path.join('.') }; // prettier-ignore
  const request = report.hasErrors ? null : readPlanRequest({ value, place }, report, site);
  if (request === null) {
    refused(report.problems);
    return 1;
  }

  const sowable = plannedDesign(request);
  const settled = { ...request, ...amounts(sowable), seed: request.seed ?? world.seed };
  const { files, key, digest } = plannedFiles(settled, world.today, site.base, words);
  const folder = join(content, 'trials', request.trial);
  const encoder = new TextEncoder();
  const inMemory = new Map([...files].map(([name, text]) => [name, encoder.encode(text)]));
  const made = readTrial({ id: request.trial, folder: shownPath(folder), files: inMemory, site });
  if (refused(made.problems) || made.trial === null) return 1;
  const keyFile = resolve(answers.values.key ?? join(dirname(content), 'keys', request.trial, 'key.csv'));
  if (key !== null && `${keyFile}${sep}`.startsWith(`${content}${sep}`)) {
    return usage(`The key may not lie in the content folder, which is published: name another file with --key.`);
  }

  const told = planTold(request, sowable, world.today, words, (done, all) => {
    if (terminal.terminal)
      terminal.err(`\r\u001b[K${done === all ? '' : words.say('command.progress', { done, all })}`);
  });
  terminal.out(`${told}\n`);
  if (world.ask !== null && from === undefined && !(await world.ask.confirm({ message: words.ui['planning.ask.write'], default: true }))) return 1; // prettier-ignore
  const opened = key === null ? null : readTrial({ id: request.trial, folder: '', files: new Map([...inMemory, ['key.csv', encoder.encode(key)]]), site }).trial; // prettier-ignore
  const sealed = opened && sealedKey({ trial: opened, site, words });
  const sheets = sheetsOf({ trial: made.trial, site, words }).map(
    (sheet) => [`sheets/${sheet.file}`, printed(sheet)] as const,
  );
  const taken = await writePlan(
    content,
    folder,
    new Map([...inMemory, ...sheets]),
    new Map([
      ...(key === null ? [] : [[keyFile, encoder.encode(key)] as const]),
      ...(sealed ? [[join(dirname(keyFile), sealed.file), printed(sealed)] as const] : []),
    ]),
  );
  if (taken !== null) {
    terminal.err(`${shownPath(taken)} is there already and stays as it is; nothing was written. Choose another id for the trial, or another place for its key.\n`); // prettier-ignore
    return 1;
  }
  const lines = [
    words.say('planning.written', { folder: shownPath(folder) }),
    [...files.keys(), 'sheets/'].map((name) => `  ${name}`).join('\n'),
    ...(key === null ? [] : [words.say('planning.key', { file: shownPath(keyFile) })]),
    key === null ? words.say('planning.seed', { seed: settled.seed }) : words.ui['planning.seedInKey'],
    words.say('planning.digest', { date: words.date(world.today), digest: digest.slice(0, 12) }),
    words.say('planning.next', { today: world.today, trial: request.trial }),
  ];
  terminal.out(lines.map((line) => `${line.startsWith('  ') ? line : wrapped(line, 100)}\n`).join(''));
  return 0;

  function usage(message: string): 2 {
    terminal.err(`${message}\n\n${USAGE}`);
    return 2;
  }

  function refused(problems: readonly Problem[]): boolean {
    const errors = problems.filter(({ level }) => level === 'error');
    if (errors.length > 0) terminal.err(`${errors.map(problemText).join('\n\n')}\n`);
    return errors.length > 0;
  }
}

const amounts = ({ each, seeds }: { readonly each: number; readonly seeds: number }) => ({ each, seeds });

const printed = ({ document }: Sheet): Uint8Array => pdfOf([document]).bytes;
