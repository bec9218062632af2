import type { Analysis } from '../analysis/analysis.ts';
import { toldTrial } from '../archive/told-trial.ts';
import type { Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import type { AnalysedTrial } from './analysed-trial.ts';
import { projectKeeper } from './kept/build-keeper.ts';

/**
 * The file that keeps a trial as it may be told with its analysis (`analysedTrial`), as it was worked out from the same
 * trial before, or now: no page, feed or file starts from anything else.
 *
 * @param analysis of a trial, as it may be told
 * @throws {Error} of the file system, where it cannot be written
 */
export function keptAnalysis(trial: Trial, language: string, analysis: (trial: Trial) => Analysis): Promise<string> {
  const told = toldTrial(trial);
  return projectKeeper().file('trial', JSON.stringify([language, told]), async () =>
    JSON.stringify({
      trial: told,
      analysis: publishedAnalysis(told, language, analysis(told)),
    } satisfies AnalysedTrial),
  );
}
