import type { Trial } from '../../trial/trial.ts';
import type { Caveat, CaveatId, Result } from '../analysis.ts';
import { RULES } from './rules.ts';

/**
 * Everything that limits what this trial can claim (methods 13), each with its evidence and without its
 * sentence (src/wording writes it). What holds of every outcome alike, as the layout does, is told once for
 * the whole trial. Sorted: serious, caution, note; then by id, outcome, lot and treatment.
 */
export function caveatsOf(trial: Trial, results: readonly Result[]): Caveat[] {
  const found = Object.values(RULES).flatMap((rule) => rule(trial, results));
  const unlike = new Map(
    found.map((caveat) => overOutcomes(caveat, found, results)).map((caveat) => [keyOf(caveat), caveat]),
  );
  return [...unlike].toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, caveat]) => caveat);
}

/** Caveats about how the trial was laid out: the same for all outcomes, unless other sowings entered. */
const OF_LAYOUT: readonly CaveatId[] = [
  'one-sowing',
  'one-batch',
  'confounded-place',
  'confounded-block',
  'confounded-position',
  'confounded-sowing-day',
  'unequal-soak',
  'unequal-handling',
  'positions-unbalanced',
  'incomplete-blocks',
  'batches-span-blocks',
  'few-units',
];

/** A caveat of the layout that every outcome with this comparison has alike, as one of the whole trial. */
function overOutcomes(caveat: Caveat, found: readonly Caveat[], results: readonly Result[]): Caveat {
  if (!OF_LAYOUT.includes(caveat.id)) return caveat;
  const whole = { ...caveat, outcome: null };
  const key = keyOf(whole);
  const outcomes = found.filter((other) => keyOf({ ...other, outcome: null }) === key).map(({ outcome }) => outcome);
  const concerned = results.filter(({ comparisons }) =>
    comparisons.some(
      ({ lot, treatment, control }) =>
        lot === caveat.lot && (treatment === caveat.treatment || control === caveat.treatment),
    ),
  );
  return concerned.every(({ outcome }) => outcomes.includes(outcome)) ? whole : caveat;
}

const WEIGHTS = ['serious', 'caution', 'note'];

/** Sorts as text; null comes before any name. */
const keyOf = ({ id, weight, outcome, lot, treatment, evidence }: Caveat): string =>
  [WEIGHTS.indexOf(weight), id, outcome ?? '', lot ?? '', treatment ?? '', JSON.stringify(evidence)].join('\u0000');
