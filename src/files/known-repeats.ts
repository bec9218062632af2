import type { Site, Trial } from '../trial/trial.ts';

/** Another trial of this site that bears on the same question. */
export interface KnownRepeat {
  readonly trial: Pick<Trial, 'id' | 'title' | 'status' | 'authors'>;
  /** Names this trial as the one that it repeats, is named by it, or shares a question with it. */
  readonly how: 'repeats' | 'original' | 'question';
}

/**
 * Finds trials of this site that repeat a given one, that it repeats, or that answer a question with it; each once, in their
 * order.
 *
 * @param trials of the site, those that will be given among them
 */
export function knownRepeats(trials: readonly Trial[], site: Site): (trial: Trial) => readonly KnownRepeat[] {
  const repeaters = Map.groupBy(
    trials.filter(({ repeats }) => repeats !== null),
    ({ repeats }) => plain(repeats),
  );
  const questions = Object.values(site.questions).map((question) => question.trials.map(({ trial }) => trial));
  const places = new Map(trials.map((trial, place) => [trial.id, { trial, place }]));
  const named = new Map(trials.flatMap((trial) => addresses(trial, site).map((address) => [address, trial] as const)));

  return (trial) => {
    const repeats = addresses(trial, site).flatMap((address) => repeaters.get(address) ?? []);
    const original = trial.repeats === null ? undefined : named.get(plain(trial.repeats));
    const shared = questions.filter((ids) => ids.includes(trial.id)).flat();
    const found = new Map<string, KnownRepeat['how']>([
      ...shared.map((id) => [id, 'question'] as const),
      ...(original ? [[original.id, 'original'] as const] : []),
      ...repeats.map(({ id }) => [id, 'repeats'] as const),
    ]);
    found.delete(trial.id);
    return [...found]
      .flatMap(([id, how]) => {
        const other = places.get(id);
        return other ? [{ ...other, how }] : [];
      })
      .toSorted((a, b) => a.place - b.place)
      .map(({ trial: { id, title, status, authors }, how }) => ({ trial: { id, title, status, authors }, how }));
  };
}

/** Those of a trial's report on this site, under its id and the old ones, plain. */
const addresses = ({ id, aliases }: Trial, site: Site): string[] =>
  [id, ...aliases].map((name) => `${plain(site.base)}/trials/${name}`);

/** An address without what makes no difference to where it leads. */
const plain = (address: string | null): string =>
  (address ?? '').replace(/^https?:\/\/(www\.)?/i, '').replace(/(\/index\.html|\/)?([?#].*)?$/, '');
