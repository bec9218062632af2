import { getEntry } from 'astro:content';
import { allQuestions } from './all-questions.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { currentSite } from './current-site.ts';
import { repeatedBy } from './repeated-by.ts';
import { repeatsHere } from './repeats-here.ts';

/** What every part of a report is made from. */
export interface Report {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly site: Site;
  readonly words: Words;
  /** Titles of trials of the same question by others. */
  readonly repeatedBy: readonly string[];
}

/** The trial of the page being made: components in a grower's text find it without props. `params` is `Astro.params`. */
export async function currentTrial(params: Readonly<Record<string, string | undefined>>): Promise<Report> {
  const entry = await getEntry('trials', params.trial ?? '');
  if (!entry) throw new Error(`There is no trial "${params.trial}"; this component belongs on the page of a trial.`);
  const questions = (await allQuestions()).map(({ data }) => data.pooled);
  const { trial } = entry.data;
  const { site, words } = await currentSite();
  const repeats = (await repeatsHere(trial, site)).flatMap((other) => (other.how === 'repeats' ? [other.trial] : []));
  return { ...entry.data, site, words, repeatedBy: repeatedBy(trial, questions, repeats) };
}
