import { soFar } from '../analysis/storage/so-far.ts';
import type { Trial } from '../trial/trial.ts';

/**
 * A trial as it may be told now. While one that is counted blind is still planned or growing, nothing may say
 * which sowing had which treatment: sowings lose theirs, and the raw files that hold it are not published yet
 * (key.csv; sowings.csv or plan.yaml where the assignment, or the seed that it can be drawn from again, stands there).
 * The plan's copy loses both too, so that no change from plan names a treatment. Telling a told trial changes nothing.
 *
 * @returns the trial itself where there is nothing to keep back, as in a storage series of which every test with
 *   known treatments is over
 */
export function toldTrial(trial: Trial): Trial {
  const isCounting = trial.status === 'planned' || trial.status === 'growing';
  if (trial.scoring.blind !== 'yes' || !isCounting || soFar(trial) !== null) return trial;
  const kept = new Set(['key.csv']);
  if (!trial.keyKeptApart && trial.sowings.some(({ treatment }) => treatment !== null)) kept.add('sowings.csv');
  if (trial.plan && tellsTreatments(trial.plan.copy)) kept.add('plan.yaml');
  return {
    ...trial,
    keyKeptApart: false,
    sowings: trial.sowings.map((sowing) => ({ ...sowing, treatment: null, soakHours: null })),
    plan: trial.plan && { ...trial.plan, copy: toldCopy(trial.plan.copy) },
    inputs: trial.inputs.filter(({ file }) => !kept.has(file)),
  };
}

function tellsTreatments(copy: Readonly<Record<string, unknown>>): boolean {
  const sowings = Array.isArray(copy.sowings) ? copy.sowings : [];
  return copy.seed != null || sowings.some((sowing) => sowing?.treatment != null);
}

function toldCopy({ seed: _seed, ...copy }: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  if (!Array.isArray(copy.sowings)) return copy;
  return { ...copy, sowings: copy.sowings.map((sowing) => ({ ...sowing, treatment: undefined })) };
}
