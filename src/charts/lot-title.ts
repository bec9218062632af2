import type { Comparison } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { sentence } from '../wording/sentence.ts';
import type { Words } from '../wording/words.ts';
import { placeOf } from './place-of.ts';

/** The heading of a lot's part of a result: its name; for `all` of how many it is: "Together: 2 lots". */
export function lotTitle(trial: Trial, lot: string, comparisons: readonly Comparison[], words: Words): string {
  const [pooled] = comparisons.filter((comparison) => comparison.lot === 'all');
  const place = lot === 'all' && pooled ? placeOf(trial, pooled, words) : null;
  return place === null ? words.lotName(trial, lot) : sentence(place);
}
