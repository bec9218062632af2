import type { Term } from '../words.ts';
import { bench } from './glossary/bench.ts';
import { pooling } from './glossary/pooling.ts';
import { statistics } from './glossary/statistics.ts';

/** Every term of the trade and of statistics that the pages use, by alphabet; umlauts stand with their vowels. */
export const glossary = (): readonly Term[] => TERMS;

const { compare } = new Intl.Collator('de');

const TERMS: readonly Term[] = [...bench, ...statistics, ...pooling]
  .map(([id, term, meaning]) => ({ id, term, meaning }))
  .sort((a, b) => compare(a.term, b.term));
