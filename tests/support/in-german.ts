import type { Trial } from '../../src/trial/trial.ts';

const TEXTS: Readonly<Record<string, string>> = {
  'Sealed jar': 'Dichtes Glas',
  'Paper packet': 'Papiertüte',
  leek: 'Porree',
  cress: 'Kresse',
  onion: 'Zwiebel',
  'lower shelf': 'unteres Brett',
  'upper shelf': 'oberes Brett',
  window: 'Fenster',
  shelf: 'Regalbrett',
  'knocked over': 'umgestoßen',
  'Glas mit Kieselgel im Kühlschrank': 'Glas mit Kieselgel im Kühlschrank',
};

/**
 * The same trial with its authors' texts in German, the plan's copy of them included: whatever is English in
 * what is said of it then comes from our own words. Ids, file names and numbers stay.
 */
export function inGerman(trial: Trial): Trial {
  const texts = new Map(Object.entries(TEXTS));
  const name = (text: string | null, german: string) => {
    if (text !== null && !texts.has(text)) texts.set(text, german);
  };
  trial.treatments.forEach(({ label }, index) => name(label, `Behandlung ${index + 1}`));
  trial.lots.forEach(({ crop, cultivar }, index) => {
    name(crop, 'Bohne');
    name(cultivar, `Sorte ${index + 1}`);
  });
  trial.events.forEach(({ what }) => name(what, 'umgestoßen'));
  trial.sowings.forEach(({ position }) => {
    if (position !== null && /\p{L}{3}/u.test(position)) name(position, `Platz ${texts.size}`);
  });
  trial.authors.forEach((person, index) => name(person.name, `Person ${index + 1}`));
  name(trial.repeats, 'https://versuche.beispiel/bohnen/');
  const impressions = typeof trial.impression === 'string' ? [trial.impression] : Object.values(trial.impression ?? {});
  for (const text of impressions) name(text, 'Schien uns schneller.');
  return replaced(trial, texts) as Trial;
}

/** Fields that hold an author's own text; ids such as `lot: leek` are left alone. */
const WRITTEN = new Set(['label', 'crop', 'cultivar', 'what', 'position', 'name', 'repeats', 'impression', 'block']);

function replaced(value: unknown, texts: ReadonlyMap<string, string>, written = false): unknown {
  if (typeof value === 'string') return written ? (texts.get(value) ?? value) : value;
  if (Array.isArray(value)) return value.map((each) => replaced(each, texts, written));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [
      key,
      replaced(each, texts, WRITTEN.has(key) || (written && typeof each === 'string')),
    ]),
  );
}
