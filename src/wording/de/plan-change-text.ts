import type { PlanChange } from '../../analysis/analysis.ts';
import { quoted } from './quoted.ts';
import { report } from './ui/report.ts';

/** One difference from the plan, as a sentence: "Der Plan sagte Tag 14; gezählt wurde am Tag 15." */
export function planChangeText({ what, planned, done }: PlanChange): string {
  const path = what.split('.');
  const field = path.at(-1) ?? what;
  if (what === 'digest') return 'Die Datei mit dem Plan wurde geändert, nachdem er festgelegt war.';
  if (what === 'key_sha256') return 'Der Schlüssel ist nicht der, der mit dem Plan versiegelt wurde.';
  if (field === 'left-out') return `${path[1]} war geplant und wurde weggelassen: ${done}.`;
  const thing = THINGS[path[0] ?? ''] ?? path[0] ?? what;
  if (path.length === 2 && path[0] !== 'sowing' && path[0] !== 'scoring') {
    return planned === null
      ? `Neu gegenüber dem Plan: ${thing} ${quoted(done ?? '')}.`
      : `Im Plan, aber weggefallen: ${thing} ${quoted(planned)}.`;
  }
  if (path[0] === 'outcomes' && field === 'day' && isDay(planned) && isDay(done)) {
    return `Der Plan sagte Tag ${planned}; gezählt wurde am Tag ${done}.`;
  }
  const name = path.length === 3 ? ` (${thing} ${path[1]})` : '';
  return `${FIELDS[field] ?? field.replaceAll('_', ' ')}${name}: Der Plan sagte ${said(field, planned)}; jetzt ist es ${said(field, done)}.`;
}

const isDay = (text: string | null) => text !== null && /^[\d.]+$/.test(text);

const VALUES: Readonly<Record<string, string>> = {
  ...report,
  'blind.yes': 'ja',
  'blind.no': 'nein',
  'blind.unknown': 'nicht aufgezeichnet',
  'counts.cumulative': 'insgesamt aufgegangen',
  'counts.new': 'neu aufgegangen',
  'primary.true': 'ja',
  'primary.false': 'nein',
  'pool.true': 'ja',
  'pool.false': 'nein',
  'varies.soak': 'Einweichen',
  'varies.drying': 'Trocknen',
  'varies.storage': 'Lagerung',
  'varies.light': 'Licht',
  'varies.temperature': 'Temperatur',
  'varies.medium': 'Substrat',
  'varies.dressing': 'Beizung',
  'varies.age': 'Alter der Samen',
  'varies.other': 'etwas anderes',
};
const said = (field: string, text: string | null) =>
  text === null ? 'nichts' : quoted(VALUES[`${field}.${text}`] ?? text);

const THINGS: Readonly<Record<string, string>> = {
  lots: 'Partie',
  treatments: 'Behandlung',
  outcomes: 'Zielgröße',
  sowings: 'Aussaat',
  sowing: 'Aussaat',
  scoring: 'Auszählung',
};

const FIELDS: Readonly<Record<string, string>> = {
  question: 'Frage',
  varies: 'Was mit Absicht geändert wird',
  matters: 'Kleinster Unterschied, der zählt',
  primary: 'Wichtigste Zielgröße',
  pool: 'Zusammenfassen der Partien',
  soak_hours: 'Stunden des Einweichens',
  days: 'Geplante Tage der Auszählung',
  day: 'Tag',
  measure: 'Messweise',
  column: 'Spalte',
  unit: 'Einheit',
  lot: 'Partie',
  treatment: 'Behandlung',
  label: 'Bezeichnung',
  control: 'Kontrolle',
  seeds: 'Zahl der Samen',
  position: 'Platz',
  block: 'Block',
  batch: 'Charge',
  tray: 'Schale',
  sown: 'Tag der Aussaat',
  container: 'Gefäß',
  counts: 'Art der Zählung',
  germinated: 'Bedeutung von „aufgegangen“',
  blind: 'Zählen, ohne zu wissen, was was ist',
  assignment: 'Art der Aufstellung',
  treated: 'Art der Behandlung',
  crop: 'Kultur',
  species: 'Botanischer Name',
  cultivar: 'Sorte',
};
