import { DataError } from '../trial/data-error.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { readContent } from './read-content.ts';

/**
 * The site and the trials that may be published. Where site.yaml says `on_problem: leave-out`, a trial with
 * errors is left out; mistakes in the site files stop in any case.
 *
 * @throws {DataError} listing every error of all files
 */
export async function readPublishable(
  folder: string,
): Promise<{ readonly site: Site; readonly trials: readonly Trial[]; readonly leftOut: readonly string[] }> {
  const { site, trials, problems } = await readContent(folder);
  const stopping =
    site.onProblem === 'leave-out' ? problems : [...problems, ...trials.flatMap((trial) => trial.problems)];
  if (stopping.some(({ level }) => level === 'error')) throw new DataError(stopping);
  return {
    site,
    trials: trials.flatMap(({ trial }) => trial ?? []),
    leftOut: trials.flatMap(({ id, trial }) => (trial === null ? [id] : [])),
  };
}
