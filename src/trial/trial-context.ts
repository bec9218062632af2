import type { Lot, Status, Treatment, YesNo } from './trial.ts';

/**
 * What the tables of a trial are checked against. Null where trial.yaml does not say it or says it
 * wrongly (which was reported): what hangs on it is then not checked, so that one slip gives one problem.
 */
export interface TrialContext {
  readonly status: Status | null;
  readonly sown: string | null;
  readonly blind: YesNo;
  readonly counts: 'cumulative' | 'new';
  /** Lots of this trial by id, in order. */
  readonly lots: ReadonlyMap<string, Lot> | null;
  readonly treatments: ReadonlyMap<string, Treatment> | null;
  /** A storage series: sowings at `stored` 0 need no treatment. */
  readonly storage: boolean;
}
