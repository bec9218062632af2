/** A unit of an outcome by itself, for the head of a column or an axis: "days" -> "Tage"; signs such as "mm" as they are. */
export const unitName = (unit: string): string => NAMES[unit] ?? unit;

const NAMES: Readonly<Record<string, string>> = {
  days: 'Tage',
  years: 'Jahre',
  months: 'Monate',
  points: 'Punkte',
  'percentage points': 'Prozentpunkte',
  'seeds per day per 100 sown': 'Samen je Tag von 100 gesäten',
  '% wet basis': '% der Gesamtmasse',
  '% of mass lost': '% Masseverlust',
};
