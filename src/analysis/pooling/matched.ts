import type { Candidate } from './candidates-of.ts';

/**
 * Of each trial the comparison that asks what the others ask. The pair of treatments that most trials compare is the
 * question's (of equally many the first by alphabet, so that the order of trials says nothing); a trial whose entry names
 * its treatments goes by them whatever they are called.
 *
 * @param trials candidates of each trial
 * @returns null for a trial whose treatments do not match
 */
export function matched(trials: readonly (readonly Candidate[])[]): readonly (Candidate | null)[] {
  const votes = trials.flatMap((candidates) => [
    ...new Set(candidates.filter(({ named, turned }) => !named && !turned).map(pairName)),
  ]);
  const pair = mostCommon(votes);
  return trials.map((candidates) => {
    const same = candidates.filter((candidate) => pairName(candidate) === pair);
    if (same[0]) return same[0];
    const straight = candidates.filter(({ named, turned }) => named && !turned);
    const all = candidates.filter(({ named }) => named);
    return (straight.length === 1 ? straight[0] : all.length === 1 ? all[0] : null) ?? null;
  });
}

/** The value that stands most often in a list; of equally many the first by alphabet; undefined for an empty list. */
export function mostCommon(values: readonly string[]): string | undefined {
  const count = (value: string) => values.filter((other) => other === value).length;
  return [...new Set(values)].toSorted((a, b) => count(b) - count(a) || (a < b ? -1 : 1))[0];
}

const pairName = ({ treatment, control }: Candidate) => JSON.stringify([treatment, control]);
