import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { readKept } from './kept/read-kept.ts';

/** A trial as it may be told, with its analysis. */
export interface AnalysedTrial {
  readonly trial: Trial;
  readonly analysis: Analysis;
}

const latest = new Map<string, { readonly file: string; readonly analysed: AnalysedTrial }>();

/**
 * What the reading of the content kept of a trial: read once, and again where another reading kept something else.
 *
 * @param file as a `ContentReader` gives it
 * @throws {Error} where the file is gone
 */
export function analysedTrial(id: string, file: string): AnalysedTrial {
  const known = latest.get(id);
  if (known?.file === file) return known.analysed;
  const kept = readKept(file);
  if (!kept) throw new Error(`${file} was removed while the site was built; build again`);
  const analysed: AnalysedTrial = JSON.parse(new TextDecoder().decode(kept));
  latest.set(id, { file, analysed });
  return analysed;
}
