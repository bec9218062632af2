import { NOT_DRIED } from '../analysis/storage/not-dried.ts';

/** Kinds that need a notice, by botanical genus or species; Latin names need no translation. */
export type SpeciesNotice =
  | 'toxic-castor'
  | 'toxic-nightshade'
  | 'toxic-rhubarb'
  | 'toxic-bean'
  | 'toxic-foxglove'
  | 'toxic-lupin'
  | 'toxic-ornamental'
  | 'toxic-kernel'
  | 'toxic-buckwheat'
  | 'allergen'
  | 'desiccation-sensitive'
  | 'desiccation-intermediate';

/** sources.md section 7 (toxic seedlings, raw kidney beans, allergens) and 2.6 (seeds that must not be dried). */
export const SPECIES: Readonly<Record<SpeciesNotice, readonly string[]>> = {
  'toxic-castor': ['Ricinus'],
  'toxic-nightshade': ['Solanum', 'Lycopersicon', 'Capsicum'],
  'toxic-rhubarb': ['Rheum'],
  'toxic-bean': ['Phaseolus'],
  'toxic-foxglove': ['Digitalis'],
  'toxic-lupin': ['Lupinus'],
  'toxic-ornamental': ['Datura', 'Brugmansia', 'Lathyrus odoratus', 'Ipomoea'],
  'toxic-kernel': ['Malus', 'Prunus persica'],
  'toxic-buckwheat': ['Fagopyrum'],
  allergen: ['Sesamum', 'Sinapis', 'Brassica juncea', 'Brassica nigra', 'Lupinus', 'Apium', 'Glycine max'],
  'desiccation-sensitive': NOT_DRIED.sensitive,
  'desiccation-intermediate': NOT_DRIED.intermediate,
};
