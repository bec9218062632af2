import type { Trial } from '../trial/trial.ts';
import type { Analysis } from './analysis.ts';
import { caveatsOf } from './caveats/caveats-of.ts';
import { moistureOf } from './moisture.ts';
import { planChanges } from './plan-changes.ts';
import { resultsOf } from './results-of.ts';
import { SOFTWARE } from './software.ts';
import { soFar } from './storage/so-far.ts';
import { sortedTrial } from './sorted-trial.ts';
import { withCeilings } from './with-ceilings.ts';

/**
 * The analysis of one trial (methods 0 to 8 and 13), the same for the same trial whatever the order of
 * its rows. The texts of the caveats are left empty: sentences are built from it later (src/wording).
 *
 * A trial that is planned or growing has no results; of a storage series that goes on, every test that is complete
 * is analysed.
 */
export function analyse(trial: Trial): Analysis {
  const all = sortedTrial(trial);
  const told = compared(all);
  const ordered = told ?? all;
  const results = told === null ? [] : resultsOf(told);
  const caveats = caveatsOf(ordered, results);
  return {
    format: 'fairsown-analysis/1',
    trial: trial.id,
    inputs: trial.inputs,
    results: withCeilings(results, caveats),
    moisture: moistureOf(ordered),
    caveats,
    plan: planChanges(ordered),
    software: SOFTWARE,
  };
}

/** What of a trial may be compared now; null: nothing. */
function compared(trial: Trial): Trial | null {
  if (trial.status === 'growing') return soFar(trial);
  return trial.status === 'planned' ? null : trial;
}
