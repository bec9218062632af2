/** Years of storage as an author writes them: at most two digits after the point. */
export const storedText = (years: number): string => String(Math.round(years * 100) / 100);
