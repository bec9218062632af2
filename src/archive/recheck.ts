import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { languages } from '../wording/words-for.ts';
import { recompute, type Recheck } from './recompute.ts';

/**
 * Works a published trial out again from its raw files and compares it with what was published, the sentences of its
 * caveats included (`recompute` with the words of every language).
 *
 * @returns a sentence where they are not the files of a published trial, or of a newer format
 */
export const recheck = (files: ReadonlyMap<string, Uint8Array>): Recheck | string => recompute(files, inItsLanguage);

/** Worked out again in the language in which it was published; in English where no language gives its words. */
function inItsLanguage(trial: Trial, published: Analysis): Analysis {
  const texts = ({ caveats }: Analysis) =>
    Array.isArray(caveats) && JSON.stringify(caveats.map((caveat: { text: string } | null) => caveat?.text));
  const [english = publishedAnalysis(trial, 'en'), ...others] = languages.map((tag) => publishedAnalysis(trial, tag));
  return [english, ...others].find((analysis) => texts(analysis) === texts(published)) ?? english;
}
