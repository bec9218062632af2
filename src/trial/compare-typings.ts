import { contextOf } from './context-of.ts';
import { WHOLE_FILE } from './file-problems.ts';
import { FolderProblems } from './folder-problems.ts';
import type { Problem } from './problem.ts';
import { readReferences } from './read-references.ts';
import { readTables } from './read-tables.ts';
import { readTrialYaml } from './read-trial-yaml.ts';
import type { TrialSource } from './read-trial.ts';
import { CATEGORIES, type Check } from './tables/check.ts';
import { mergeFates } from './tables/merge-fates.ts';
import { readCounts } from './tables/read-counts.ts';
import { shown } from './text/shown.ts';

/** The numbers of a check that two typings are compared in; who counted and notes may be worded anew. */
const NUMBERS = ['germinated', ...CATEGORIES] as const;

/**
 * Compares counts.csv with a second typing of the same sheets, cell by cell as written. Layouts may differ, sowings
 * may go by id or label, days by number or date; a row that is missing is the same as one that was not checked.
 *
 * @param second the other file: folder and name as shown in problems
 * @returns an error for each cell that differs, at its place in counts.csv (in the second file where it stands only
 *   there), after what could not be read in the second file; how many numbers were compared
 */
export function compareTypings(
  { files, folder, site, unsure = new Set() }: Omit<TrialSource, 'id'>,
  second: { readonly folder: string; readonly name: string; readonly bytes: Uint8Array },
): { readonly problems: readonly Problem[]; readonly compared: number } {
  const known = new FolderProblems(folder); // what there is to say about these files was said when the trial was read
  const trialYaml = readTrialYaml(files.get('trial.yaml'), known.in('trial.yaml'));
  const context = contextOf(trialYaml, readReferences(files, known, site, unsure).lots);
  const uncounted = new Map([...files].filter(([name]) => ['sowings.csv', 'key.csv'].includes(name)));
  const { names } = readTables(uncounted, known, context, undefined);

  const ours = new FolderProblems(folder);
  const theirs = new FolderProblems(second.folder);
  const first = files.get('counts.csv');
  if (first === undefined) {
    ours.in('counts.csv').error(WHOLE_FILE, {
      rule: 'no-records',
      message: 'there is no counts.csv to compare with',
      remedy: 'Save the first typing as counts.csv in the folder of the trial.',
    });
    return { problems: ours.problems, compared: 0 };
  }
  const checksOf = (bytes: Uint8Array, problems: FolderProblems, name: string) =>
    mergeFates(readCounts(bytes, problems.in(name), names)?.checks ?? [], []);
  const theirChecks = checksOf(second.bytes, theirs, second.name);
  const ourChecks = checksOf(first, ours, 'counts.csv');
  // Differences only: what else is wrong with counts.csv stands with the trial.
  ours.in('counts.csv').problems.length = 0;
  const otherFile = theirs.in(second.name).file;
  const compared = compare(ourChecks, theirChecks, { ours: `${folder}/counts.csv`, theirs: otherFile });
  return { problems: [...theirs.problems, ...ours.problems], compared };
}

function compare(
  ourChecks: readonly Check[],
  theirChecks: readonly Check[],
  files: { readonly ours: string; readonly theirs: string },
): number {
  const theirsOf = new Map(theirChecks.map((check) => [keyOf(check), check]));
  let compared = 0;
  for (const ours of ourChecks) {
    const theirs = theirsOf.get(keyOf(ours)) ?? null;
    theirsOf.delete(keyOf(ours));
    compared += differences(ours, theirs, files.theirs);
  }
  for (const theirs of theirsOf.values()) compared += differences(theirs, null, files.ours);
  return compared;
}

/** Reports at `here` every number that `there` has otherwise; gives how many there were to compare. */
function differences(here: Check, there: Check | null, file: string): number {
  const given = NUMBERS.filter((field) => here[field] !== null || (there?.[field] ?? null) !== null);
  for (const field of given) {
    const other = there?.[field] ?? null;
    if (other === here[field]) continue;
    const where = there === null ? `${file} has none` : `${file}:${there.line} has ${written(other)}`;
    here.say('error', field, {
      rule: 'typings-differ',
      message: `found ${written(here[field])} for sowing ${shown(here.sowing)} on day ${here.day}, but ${where}`,
      remedy: 'Look at the sheet of that day, and correct whichever was mistyped.',
    });
  }
  return given.length;
}

const keyOf = ({ sowing, day }: Check) => JSON.stringify([sowing, day]);
const written = (value: number | null) => (value === null ? 'no number' : String(value));
