import type { Trial } from '../trial/trial.ts';
import type { Analysis } from './analysis.ts';
import { caveatsOf } from './caveats/caveats-of.ts';
import { moistureOf } from './moisture.ts';
import { planChanges } from './plan-changes.ts';
import { resultsOf } from './results-of.ts';
import { SOFTWARE } from './software.ts';
import { sortedTrial } from './sorted-trial.ts';
import { withCeilings } from './with-ceilings.ts';

/**
 * The analysis of one trial (methods 0 to 8 and 13), the same for the same trial whatever the order of
 * its rows. The texts of the caveats are left empty: sentences are built from it later (src/wording).
 *
 * A trial that is planned or growing has no results.
 */
export function analyse(trial: Trial): Analysis {
  const ordered = sortedTrial(trial);
  const results = resultsOf(ordered);
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
