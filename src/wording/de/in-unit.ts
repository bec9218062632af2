/**
 * A number's text with its unit, by a no-break space: "3 mm", "1,2 Tage", "1 Tag", "unter 1 Punkt"; in the dative "von
 * 2 Tagen". `unit` is the analysis's own name: "days", "points", "years" or a sign such as "mm"; empty: none.
 */
export function inUnit(text: string, unit: string, form: 'plain' | 'dative' = 'plain'): string {
  if (unit === '') return text;
  const [one, many, dative] = WORDS[unit] ?? [unit, unit, unit];
  return `${text}\u00A0${/(^| )1$/.test(text) ? one : form === 'dative' ? dative : many}`;
}

/** Unit of Maguire's rate. */
const RATE = 'Samen je Tag von 100 gesäten';

const WORDS: Readonly<Record<string, readonly [one: string, many: string, dative: string]>> = {
  days: ['Tag', 'Tage', 'Tagen'],
  points: ['Punkt', 'Punkte', 'Punkten'],
  years: ['Jahr', 'Jahre', 'Jahren'],
  months: ['Monat', 'Monate', 'Monaten'],
  'seeds per day per 100 sown': [RATE, RATE, RATE],
};
