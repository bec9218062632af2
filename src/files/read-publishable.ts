import { DataError } from '../trial/data-error.ts';
import type { Problem } from '../trial/problem.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { readContent } from './read-content.ts';
import type { Repeat } from './read-repeats.ts';
import type { TrialMemory } from './trial-memory.ts';

/** What errors keep from being published, with these errors. */
export interface LeftOut {
  readonly id: string;
  readonly problems: readonly Problem[];
}

/**
 * The site and the trials that may be published. Where site.yaml says `on_problem: leave-out`, a trial with
 * errors, or the zip of another site that is refused, is left out; mistakes in the site files stop in any case.
 *
 * @param memory of earlier readings of this folder: what it knows of is not read again
 * @throws {DataError} listing every error of all files
 */
export async function readPublishable(
  folder: string,
  memory?: TrialMemory,
): Promise<{
  readonly site: Site;
  readonly trials: readonly Trial[];
  /** Files that keep trials analysed, by id, as far as there are any already. */
  readonly analysed: ReadonlyMap<string, string>;
  readonly repeats: readonly Repeat[];
  readonly leftOut: readonly LeftOut[];
}> {
  const { site, trials, repeats, problems } = await readContent(folder, undefined, memory);
  const stopping =
    site.onProblem === 'leave-out'
      ? problems
      : [...problems, ...[...trials, ...repeats].flatMap((each) => each.problems)];
  if (stopping.some(({ level }) => level === 'error')) throw new DataError(stopping);
  return {
    site,
    trials: trials.flatMap(({ trial }) => trial ?? []),
    analysed: new Map(trials.flatMap(({ id, analysed }) => (analysed ? [[id, analysed]] : []))),
    repeats,
    leftOut: [...trials, ...repeats].flatMap(({ id, problems: found }) => {
      const errors = found.filter(({ level }) => level === 'error');
      return errors.length > 0 ? [{ id, problems: errors }] : [];
    }),
  };
}
