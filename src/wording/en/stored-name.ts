import { storedText } from './stored-text.ts';

/** Storage time after a name: "at the start", "stored 6 months". */
export const storedName = (years: number): string => (years === 0 ? 'at the start' : `stored ${storedText(years)}`);
