import type { Sowing, Trial } from '../trial/trial.ts';
import { repeatSowings } from './repeat-sowings.ts';

/** A trial as somebody else is to do it again. */
export interface TrialToRepeat extends Trial {
  /** Text from which the layout was drawn. */
  readonly seed: string;
}

/**
 * The same question, treatments and outcomes in places drawn anew, planned and without a count; days of counting are
 * those planned, else those on which the original was counted.
 *
 * @param address of the original report
 * @returns null where treatments or numbers of seeds are not known (yet)
 */
export function trialToRepeat(trial: Trial, address: string): TrialToRepeat | null {
  const isKnown = ({ treatment, seeds, stored }: Sowing) => seeds !== null && (treatment !== null || stored === 0);
  if (trial.sowings.length === 0 || !trial.sowings.every(isKnown)) return null;
  const seed = `repeat of ${address}`;
  const counted = [...new Set(trial.counts.map(({ day }) => day))].toSorted((a, b) => a - b);
  const days = trial.scoring.days.length > 0 ? trial.scoring.days : counted;
  return {
    ...trial,
    id: `repeat-${trial.id}`.slice(0, 64).replace(/[^A-Za-z0-9]+$/, ''),
    status: 'planned',
    repeats: address,
    authors: [],
    sown: null,
    finished: null,
    plan: null,
    doi: null,
    changes: [],
    sowings: repeatSowings(trial.sowings, seed),
    scoring: { ...trial.scoring, counts: 'cumulative', days },
    seed,
  };
}
