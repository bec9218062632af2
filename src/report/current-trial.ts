import { getEntry } from 'astro:content';
import { allQuestions } from './all-questions.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Site, Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { isBuilding } from '../files/kept/build-keeper.ts';
import type { KnownRepeat } from '../files/known-repeats.ts';
import { analysedTrial } from '../files/analysed-trial.ts';
import { currentSite } from './current-site.ts';
import { repeatedBy } from './repeated-by.ts';

/** What every part of a report is made from. */
export interface Report {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly site: Site;
  readonly words: Words;
  readonly repeats: readonly KnownRepeat[];
  /** Titles of trials of the same question by others. */
  readonly repeatedBy: readonly string[];
}

const reports = new WeakMap<Trial, Promise<Report>>();

/**
 * The trial of the page being made: components in a grower's text find it without props. `params` is `Astro.params`.
 * Put together once for all components of its page, but while `dev` runs, where what others say of it may change.
 */
export async function currentTrial(params: Readonly<Record<string, string | undefined>>): Promise<Report> {
  const entry = await getEntry('trials', params.trial ?? '');
  if (!entry) throw new Error(`There is no trial "${params.trial}"; this component belongs on the page of a trial.`);
  const { trial, analysis } = analysedTrial(entry.id, entry.data.file);
  const report = (isBuilding() && reports.get(trial)) || reportOf(trial, analysis, entry.data.repeats);
  reports.set(trial, report);
  return report;
}

async function reportOf(trial: Trial, analysis: Analysis, repeats: readonly KnownRepeat[]): Promise<Report> {
  const questions = (await allQuestions()).map(({ data }) => data.pooled);
  const { site, words } = await currentSite();
  const again = repeats.flatMap((other) => (other.how === 'repeats' ? [other.trial] : []));
  return { trial, analysis, site, words, repeats, repeatedBy: repeatedBy(trial, questions, again) };
}
