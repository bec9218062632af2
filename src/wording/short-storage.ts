import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { StorageFinding, Words } from './words.ts';

/** What the short answer of a trial says of its storage series, where that is its primary outcome; else empty. */
export function shortStorage(words: Words, trial: Trial, analysis: Analysis): readonly StorageFinding[] {
  const primary = analysis.results.find((result) => result.primary);
  return primary?.measure === 'storage' ? words.storageFindings(trial, analysis, primary) : [];
}
