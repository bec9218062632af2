import { getCollection } from 'astro:content';
import { analysedTrial, type AnalysedTrial } from '../files/analysed-trial.ts';

/** Every trial of the site with its analysis, by id. */
export async function allTrials(): Promise<readonly AnalysedTrial[]> {
  const trials = await getCollection('trials');
  return trials.map(({ id, data }) => analysedTrial(id, data.file));
}
