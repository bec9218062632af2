/** A person's own words inside a sentence: „…“; quotation marks within them become single. */
export const quoted = (text: string): string => `„${text.trim().replace(/["„“”]([^"„“”]*)["“”]/g, '‚$1‘')}“`;
