import type { Term } from '../words.ts';
import { bench } from './glossary/bench.ts';
import { statistics } from './glossary/statistics.ts';

/** Every term of the trade and of statistics that the pages use, by alphabet; umlauts stand with their vowels. */
export const glossary = (): readonly Term[] => TERMS;

const folded = (term: string) => term.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

const TERMS: readonly Term[] = [...bench, ...statistics]
  .map(([id, term, meaning]) => ({ id, term, meaning }))
  .sort((a, b) => (folded(a.term) < folded(b.term) ? -1 : 1));
