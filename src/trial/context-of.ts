import type { TrialYaml } from './read-trial-yaml.ts';
import { treatmentOf } from './treatment-of.ts';
import type { TrialContext } from './trial-context.ts';
import type { Lot } from './trial.ts';

/** What trial.yaml says that its tables are read by; null stands for what could not be read. */
export function contextOf(trialYaml: TrialYaml | null, lots: ReadonlyMap<string, Lot>): TrialContext {
  const { status, sown, scoring, lots: lotIds, treatments, storage, outcomes } = trialYaml?.given ?? {};
  const distinct = treatments !== undefined && new Set(treatments.map(({ id }) => id)).size === treatments.length;
  return {
    status: status ?? null,
    sown: sown ?? null,
    blind: scoring?.blind ?? 'unknown',
    counts: scoring?.counts ?? 'cumulative',
    lots: lotIds?.every((id) => lots.has(id)) ? new Map(lotIds.map((id) => [id, lots.get(id) as Lot])) : null,
    treatments: distinct ? new Map(treatments?.map((given) => [given.id, treatmentOf(given)])) : null,
    storage: storage !== undefined || (outcomes ?? []).some(({ measure }) => measure === 'storage'),
  };
}
