import type { BenchTrial } from '../../trial/bench/bench.ts';
import type { Trial } from '../../trial/trial.ts';
import { toldTrial } from '../told-trial.ts';

/** A trial of the site for the page that records it. */
export interface PublishedBenchTrial extends BenchTrial {
  readonly format: 'fairsown-bench/1';
  /** Published raw files that hold what was recorded so far. */
  readonly files: readonly string[];
}

const RECORDED = ['counts.csv', 'measurements.csv', 'events.csv'];

/**
 * A planned or growing trial as it is taken to the bench, without treatments, lots and batches, whether it is counted
 * blind or not. Null for a trial that is over.
 *
 * @param inBenchOrder sorts sowings as one walks along the bench
 */
export function benchTrial(
  trial: Trial,
  inBenchOrder: (sowings: Trial['sowings']) => Trial['sowings'],
): PublishedBenchTrial | null {
  if (trial.status !== 'planned' && trial.status !== 'growing') return null;
  if (trial.sowings.length === 0) return null;
  const named = trial.outcomes.flatMap(({ measure, column }) =>
    measure === 'trait' && column !== null && !trial.traits.some((trait) => same(trait.column, column))
      ? [{ column, unit: null }]
      : [],
  );
  return {
    format: 'fairsown-bench/1',
    id: trial.id,
    title: trial.title,
    sown: trial.sown,
    germinated: trial.scoring.germinated,
    counts: trial.scoring.counts,
    days: trial.scoring.days,
    traits: [...trial.traits, ...named],
    sowings: inBenchOrder(trial.sowings).map(({ id, label, seeds, tray, block, position, sown }) => ({
      id,
      label,
      seeds,
      tray,
      block,
      position,
      sown: sown === trial.sown ? null : sown,
    })),
    files: toldTrial(trial).inputs.flatMap(({ file }) => (RECORDED.includes(file) ? [file] : [])),
  };
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();
