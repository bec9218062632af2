import type { Site, Trial } from '../trial/trial.ts';

/** Another trial of this site that bears on the same question. */
export interface KnownRepeat {
  readonly trial: Pick<Trial, 'id' | 'title' | 'status' | 'authors'>;
  /** Names this trial as the one that it repeats, is named by it, or shares a question with it. */
  readonly how: 'repeats' | 'original' | 'question';
}

/** Trials of this site that repeat the given one, that it repeats, or that answer a question with it; each once, in their order. */
export function knownRepeats(trial: Trial, trials: readonly Trial[], site: Site): readonly KnownRepeat[] {
  const shared = new Set(
    Object.values(site.questions)
      .map((question) => question.trials.map((answer) => answer.trial))
      .filter((ids) => ids.includes(trial.id))
      .flat(),
  );
  return trials.flatMap((other): KnownRepeat[] => {
    if (other.id === trial.id) return [];
    const how = pointsAt(other.repeats, trial, site)
      ? 'repeats'
      : pointsAt(trial.repeats, other, site)
        ? 'original'
        : shared.has(other.id)
          ? 'question'
          : null;
    const { id, title, status, authors } = other;
    return how === null ? [] : [{ trial: { id, title, status, authors }, how }];
  });
}

/** Whether an address is that of a trial's report on this site, under its id or an old one. */
function pointsAt(address: string | null, { id, aliases }: Trial, site: Site): boolean {
  if (address === null || !URL.canParse(address)) return false;
  const plain = (text: string) =>
    text.replace(/^https?:\/\/(www\.)?/i, '').replace(/(\/index\.html|\/)?([?#].*)?$/, '');
  const base = plain(site.base);
  return [id, ...aliases].some((name) => plain(address) === `${base}/trials/${name}`);
}
