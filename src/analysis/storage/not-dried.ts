/**
 * Kinds whose seed does not bear drying, by botanical genus: `sensitive` dies of it, `intermediate` bears only some
 * (sources do not agree on coffee and citrus). sources.md 2.6.
 */
export const NOT_DRIED = {
  sensitive: [
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
  intermediate: ['Coffea', 'Carica', 'Citrus', 'Elaeis', 'Azadirachta', 'Passiflora'],
} as const satisfies Record<string, readonly string[]>;
