import { WHOLE_FILE } from '../trial/file-problems.ts';
import { FolderProblems } from '../trial/folder-problems.ts';
import { shown } from '../trial/text/shown.ts';
import type { TrialFolder } from './read-trial-folder.ts';

/** Old ids lead to one trial only: an alias that is another trial's id or alias is an error of its trial. */
export function checkAliases(trials: readonly TrialFolder[]): TrialFolder[] {
  const taken = new Map(trials.map(({ id }) => [id.toLowerCase(), id]));
  return trials.map((entry) => {
    const problems = new FolderProblems(entry.folder);
    for (const alias of entry.trial?.aliases ?? []) {
      const owner = taken.get(alias.toLowerCase());
      if (owner === undefined) taken.set(alias.toLowerCase(), entry.id);
      else {
        problems.in('trial.yaml').error(
          { ...WHOLE_FILE, field: 'aliases' },
          {
            rule: 'alias-taken',
            message: `the old id ${shown(alias)} already leads to the trial ${shown(owner)}`,
            remedy: 'Take it out of one of the two.',
          },
        );
      }
    }
    if (!problems.hasErrors) return entry;
    return { ...entry, trial: null, problems: [...entry.problems, ...problems.problems] };
  });
}
