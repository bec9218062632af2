import { allTrials } from './all-trials.ts';
import { knownRepeats, type KnownRepeat } from '../files/known-repeats.ts';
import type { Site, Trial } from '../trial/trial.ts';

/** `knownRepeats` of a trial among those that this site publishes. */
export async function repeatsHere(trial: Trial, site: Site): Promise<readonly KnownRepeat[]> {
  const trials = await allTrials();
  return knownRepeats(
    trial,
    trials.map((other) => other.trial),
    site,
  );
}
