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
  const ofLayout = Map.groupBy(
    found.filter(({ id }) => OF_LAYOUT.includes(id)),
    (caveat) => keyOf({ ...caveat, outcome: null }),
  );
  const rest = found.filter(({ id }) => !OF_LAYOUT.includes(id)).map((caveat) => [keyOf(caveat), caveat] as const);
  const unlike = new Map([...rest, ...[...ofLayout].flatMap(([key, alike]) => overOutcomes(key, alike, results))]);
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

/**
 * Caveats of the layout that are alike but for the outcome, with their keys: one of the whole trial where every outcome with
 * this comparison has it.
 *
 * @param key of the one of the whole trial
 */
function overOutcomes(
  key: string,
  alike: readonly Caveat[],
  results: readonly Result[],
): readonly (readonly [string, Caveat])[] {
  const [first] = alike;
  if (first === undefined) return [];
  const concerned = results.filter(({ comparisons }) =>
    comparisons.some(
      ({ lot, treatment, control }) =>
        lot === first.lot && (treatment === first.treatment || control === first.treatment),
    ),
  );
  const isOfAll = concerned.every((result) => alike.some(({ outcome }) => outcome === result.outcome));
  return isOfAll ? [[key, { ...first, outcome: null }]] : alike.map((caveat) => [keyOf(caveat), caveat]);
}

const WEIGHTS = ['serious', 'caution', 'note'];

/** Sorts as text; null comes before any name. */
const keyOf = ({ id, weight, outcome, lot, treatment, evidence }: Caveat): string =>
  [WEIGHTS.indexOf(weight), id, outcome ?? '', lot ?? '', treatment ?? '', JSON.stringify(evidence)].join('\u0000');
