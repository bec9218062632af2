import type { Caveat, CaveatId, Weight } from '../analysis.ts';
import type { Evidence } from './evidence.ts';

/** How far each caveat limits what may be claimed (methods 7 and 13). */
export const WEIGHTS: Readonly<Record<CaveatId, Weight>> = {
  'one-sowing': 'serious',
  'one-batch': 'serious',
  'confounded-place': 'serious',
  'confounded-block': 'serious',
  'confounded-position': 'serious',
  'confounded-scorer': 'serious',
  'confounded-sowing-day': 'serious',
  'confounded-count-day': 'serious',
  'unequal-soak': 'serious',
  'unequal-handling': 'serious',
  'checked-on-different-days': 'serious',
  'not-randomised': 'caution',
  'positions-unbalanced': 'caution',
  'batch-unknown': 'caution',
  'outcomes-not-fixed': 'caution',
  'plan-changed': 'caution',
  'still-germinating': 'caution',
  'sowings-left-out': 'caution',
  'many-comparisons': 'caution',
  'unequal-spread': 'caution',
  'unequal-trays': 'caution',
  'incomplete-blocks': 'caution',
  'seeds-by-mass': 'caution',
  'no-seed-number': 'caution',
  'few-units': 'note',
  'few-seeds': 'note',
  'not-blind': 'note',
  'no-margin': 'note',
  'more-varied-than-luck': 'note',
  'more-alike-than-luck': 'note',
  'near-limit': 'note',
  'hardly-any': 'note',
  'no-room': 'note',
  'coarse-checks': 'note',
  'coarse-readings': 'note',
  'lots-differ': 'note',
  'ungerminated-not-sorted': 'note',
  'tested-straight-away': 'note',
  'start-moisture-unknown': 'note',
  'two-changes': 'note',
  'survivors-only': 'note',
  'one-lot': 'note',
  'batches-span-blocks': 'note',
  'half-before-first-check': 'note',
  'nothing-came-up': 'note',
  'no-half-life': 'note',
};

/** What a caveat is about; a part left out or null means all of them. `lot` "all": the pooled comparison alone. */
export interface About {
  readonly outcome?: string | null;
  readonly lot?: string | null;
  readonly treatment?: string | null;
}

/** A caveat with the weight of its id; its sentence is written later, from the evidence (src/wording). */
export function makeCaveat<Id extends CaveatId>(id: Id, about: About, evidence: Evidence[Id]): Caveat {
  const { outcome = null, lot = null, treatment = null } = about;
  return { id, weight: WEIGHTS[id], text: '', outcome, lot, treatment, evidence: { ...evidence } };
}
