/** Key of what was recorded of a sowing on a day; the same for 8 and 8.0, different for every other name. */
export const benchKey = (...parts: readonly (string | number | null)[]): string => JSON.stringify(parts);
