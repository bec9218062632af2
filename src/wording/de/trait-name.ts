import { sentence } from '../sentence.ts';

/** A measured column as a heading: common English names in German, the author's own word else. */
export function traitName(column: string): string {
  const plain = column.replaceAll('_', ' ').trim();
  return NAMES[plain.toLowerCase()] ?? sentence(plain);
}

const NAMES: Readonly<Record<string, string>> = {
  height: 'Höhe',
  hoehe: 'Höhe',
  length: 'Länge',
  laenge: 'Länge',
  width: 'Breite',
  diameter: 'Durchmesser',
  mass: 'Masse',
  'fresh mass': 'Frischmasse',
  'dry mass': 'Trockenmasse',
  leaves: 'Blätter',
  blaetter: 'Blätter',
  'leaf length': 'Blattlänge',
  blattlaenge: 'Blattlänge',
  'leaf width': 'Blattbreite',
  'root length': 'Wurzellänge',
  wurzellaenge: 'Wurzellänge',
  'shoot length': 'Sprosslänge',
  sprosslaenge: 'Sprosslänge',
  'stem length': 'Stängellänge',
  'plant height': 'Pflanzenhöhe',
};
