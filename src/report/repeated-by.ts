import type { Pooled } from '../analysis/pooled.ts';
import type { Trial } from '../trial/trial.ts';

/**
 * Titles of the trials by others that count in a question of this trial's (none where it does not count itself), or
 * that are finished and name it as the one they repeat.
 *
 * @param repeats trials that name it
 */
export function repeatedBy(
  { id, authors }: Trial,
  questions: readonly Pooled[],
  repeats: readonly Pick<Trial, 'title' | 'status' | 'authors'>[],
): readonly string[] {
  const own = authors.map(({ name }) => name).join('; ');
  const isOwn = (row: Pooled['trials'][number]) => row.trial === id && !row.elsewhere;
  const titles = questions
    .filter(({ trials }) => trials.some(isOwn))
    .flatMap(({ trials }) => trials.filter((row) => !isOwn(row) && row.growers.join('; ') !== own))
    .map(({ title }) => title);
  const named = repeats
    .filter((trial) => trial.status === 'finished' && trial.authors.map(({ name }) => name).join('; ') !== own)
    .map(({ title }) => title);
  return [...new Set([...titles, ...named])];
}
