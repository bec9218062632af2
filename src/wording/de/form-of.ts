import type { Noun } from './noun.ts';

/** A noun for a number of things: "Schale" for 1, else "Schalen"; in the dative plural "Töpfen". */
export function formOf({ one, many }: Noun, count: number, form: 'plain' | 'dative' = 'plain'): string {
  if (count === 1) return one;
  return form === 'dative' && !/[ns]$/.test(many) ? `${many}n` : many;
}
