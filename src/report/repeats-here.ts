import { getCollection } from 'astro:content';
import { knownRepeats, type KnownRepeat } from '../files/known-repeats.ts';
import type { Site, Trial } from '../trial/trial.ts';

/** `knownRepeats` of a trial among those that this site publishes. */
export async function repeatsHere(trial: Trial, site: Site): Promise<readonly KnownRepeat[]> {
  const trials = await getCollection('trials');
  return knownRepeats(
    trial,
    trials.map(({ data }) => data.trial),
    site,
  );
}
