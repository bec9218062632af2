import type { Hazard, Trial } from '../trial/trial.ts';
import { isOfKind } from '../trial/is-of-kind.ts';
import { SPECIES, type SpeciesNotice } from './species.ts';

export type NoticeId = 'seedlings-eaten' | 'seed-dressed' | 'not-food' | Hazard | SpeciesNotice;

/**
 * Notices that a trial's own facts ask for, in the order in which they are printed, with the crops that
 * brought each one. Seedlings grown as food bring the food notice; all others the reminder that they are not.
 */
export function noticeIds(trial: Trial): readonly { readonly id: NoticeId; readonly crops: readonly string[] }[] {
  const drying = trial.varies === 'drying' && !trial.involves.includes('desiccant') ? (['desiccant'] as const) : [];
  const general: NoticeId[] = [
    trial.seedlingsEaten ? 'seedlings-eaten' : 'not-food',
    ...(trial.seedDressed || trial.varies === 'dressing' ? (['seed-dressed'] as const) : []),
    ...trial.involves,
    ...drying,
  ];
  const ofSpecies = (Object.keys(SPECIES) as SpeciesNotice[])
    .filter((id) => id !== 'allergen' || trial.seedlingsEaten)
    .map((id) => ({ id, crops: cropsOf(trial, SPECIES[id]) }))
    .filter(({ crops }) => crops.length > 0);
  return [...[...new Set(general)].map((id) => ({ id, crops: [] })), ...ofSpecies];
}

function cropsOf(trial: Trial, names: readonly string[]): readonly string[] {
  const lots = trial.lots.filter(({ species }) => names.some((name) => isOfKind(species, name)));
  return [...new Set(lots.map(({ crop }) => crop))];
}
