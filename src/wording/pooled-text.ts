import type { Pooled } from '../analysis/pooled.ts';
import type { VerdictMark } from './words.ts';

/** What is said of a question that several trials answer, in one language. */
export interface PooledText {
  /** The answer with its range, and where a next repeat may fall. */
  readonly sentence: string;
  readonly mark: VerdictMark;
  /** The answer in one short line, for a chart's title and lists. */
  readonly headline: string;
  /** What limits the answer, and what it rests on: stands beside the sentence. */
  readonly limits: readonly string[];
  /** One entry a trial, in the order of `Pooled.trials`. */
  readonly trials: readonly PooledRow[];
  readonly together: SaidDifference | null;
  /** Where a next repeat may fall. */
  readonly nextResult: Pick<SaidDifference, 'range' | 'bareRange'> | null;
  /** One entry each, in the order of `Pooled.leaveOneOut`: difference and range without that trial. */
  readonly without: readonly string[];
  /** Why each trial was left out, in the order of `Pooled.leftOut`. */
  readonly leftOut: readonly string[];
}

/** A difference and what the data fit with; bare: without "per 100", where that stands beside it already. */
export interface SaidDifference {
  readonly difference: string;
  readonly range: string;
  readonly bareDifference: string;
  readonly bareRange: string;
}

export interface PooledRow extends SaidDifference {
  /** What the trial concludes by itself: "cannot tell", "not settled". */
  readonly finding: string;
  /** "4 and 4 units", "one of each". */
  readonly units: string;
}

export type PooledWords = (pooled: Pooled) => PooledText;
