import { storedText } from './stored-text.ts';

/** Storage time after a name: "am Anfang", "nach 6 Monaten Lagerung". */
export const storedName = (years: number): string =>
  years === 0 ? 'am Anfang' : `nach ${storedText(years, 'dative')} Lagerung`;
