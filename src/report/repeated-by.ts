import type { Pooled } from '../analysis/pooled.ts';
import type { Trial } from '../trial/trial.ts';

/** Titles of the trials by others that count in a question of this trial's; none where it does not count itself. */
export function repeatedBy({ id, authors }: Trial, questions: readonly Pooled[]): readonly string[] {
  const own = authors.map(({ name }) => name).join('; ');
  const isOwn = (row: Pooled['trials'][number]) => row.trial === id && !row.elsewhere;
  const titles = questions
    .filter(({ trials }) => trials.some(isOwn))
    .flatMap(({ trials }) => trials.filter((row) => !isOwn(row) && row.growers.join('; ') !== own))
    .map(({ title }) => title);
  return [...new Set(titles)];
}
