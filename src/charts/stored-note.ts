import type { Words } from '../wording/words.ts';

/** How long the seed of a row was stored, as a note below its name: "at the start", "stored 2 years"; none outside a series. */
export const storedNote = (stored: number | null, words: Words): string[] =>
  stored === null
    ? []
    : [
        stored === 0
          ? words.ui['chart.atStart']
          : words.say('chart.storedFor', { time: words.quantity(stored, 'years') }),
      ];
