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
  'desiccation-sensitive': [
    'Persea',
    'Mangifera',
    'Garcinia',
    'Litchi',
    'Nephelium',
    'Theobroma',
    'Hevea',
    'Cocos',
    'Artocarpus',
    'Eriobotrya',
    'Paullinia',
    'Quercus',
    'Castanea',
    'Aesculus',
    'Acer',
    'Zizania',
    'Asimina',
    'Nymphaea',
  ],
  'desiccation-intermediate': ['Coffea', 'Carica', 'Citrus', 'Elaeis', 'Azadirachta', 'Passiflora'],
};

/** Genus alone or genus and species: "Allium" and "Allium porrum" both match "Allium porrum var. ...". */
export const isOfKind = (species: string, name: string): boolean =>
  ` ${species.toLowerCase().replace(/\s+/g, ' ').trim()} `.startsWith(` ${name.toLowerCase()} `);
