import { getEntry } from 'astro:content';
import { authorsText } from '../files/authors-text.ts';
import { digestOf } from '../files/kept/digest-of.ts';
import { picturesDigest } from '../files/pictures-digest.ts';
import { allQuestions } from './all-questions.ts';
import { currentSite } from './current-site.ts';

/**
 * Everything from which the pages and files of a trial are made that are kept between builds, besides code: the trial with
 * its analysis (the name of their file is a digest of what both are made from), the site, what repeats it, the questions in
 * which it counts, and for its report the author's text and pictures. Whatever such a page newly takes from elsewhere
 * belongs here.
 *
 * @param address  of the page
 * @param isReport the others show neither the author's text nor pictures
 * @throws {Error} where there is no such trial
 */
export async function madeFrom(trial: string, address: string, isReport: boolean): Promise<string> {
  const entry = await getEntry('trials', trial);
  if (!entry) throw new Error(`There is no trial "${trial}" of which ${address} could be made.`);
  const { site } = await currentSite();
  const questions = (await allQuestions()).map(({ data }) => data.pooled.trials);
  const answered = questions.filter((rows) => rows.some((row) => row.trial === trial && !row.elsewhere));
  return JSON.stringify([
    address,
    entry.data,
    digestOf(site),
    answered.map(digestOf),
    isReport && [authorsText(trial), picturesDigest(trial)],
  ]);
}
