import type { Thing } from '../words.ts';
import { formOf } from './form-of.ts';
import { noun, type Noun } from './noun.ts';
import { number } from './number.ts';

/** "3 Versuche", "1 Versuch", "2 Chargen". */
export const counted = (count: number, thing: Thing | Noun, form: 'plain' | 'dative' = 'plain'): string =>
  `${number(count)} ${formOf(typeof thing === 'string' ? THINGS[thing] : thing, count, form)}`;

const THINGS: Readonly<Record<Thing, Noun>> = {
  trial: noun('m', 'Versuch', 'Versuche'),
  lot: noun('f', 'Partie', 'Partien'),
  crop: noun('f', 'Kultur', 'Kulturen'),
  grower: noun('f', 'Person', 'Personen'),
  question: noun('f', 'Frage', 'Fragen'),
  treatment: noun('f', 'Behandlung', 'Behandlungen'),
  seed: noun('m', 'Samen', 'Samen'),
  sowing: noun('f', 'Aussaat', 'Aussaaten'),
  comparison: noun('m', 'Vergleich', 'Vergleiche'),
  caveat: noun('m', 'Vorbehalt', 'Vorbehalte'),
  picture: noun('n', 'Bild', 'Bilder'),
  file: noun('f', 'Datei', 'Dateien'),
  day: noun('m', 'Tag', 'Tage'),
  year: noun('n', 'Jahr', 'Jahre'),
  problem: noun('m', 'Fehler', 'Fehler'),
  warning: noun('f', 'Warnung', 'Warnungen'),
  notice: noun('m', 'Hinweis', 'Hinweise'),
};
