import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { analysedTrial } from '../files/analysed-trial.ts';
import { printedDigest } from '../files/printed-digest.ts';
import { seasonOf } from '../print/digest/season-of.ts';
import { allTrials } from '../report/all-trials.ts';
import { currentSite } from '../report/current-site.ts';
import { href } from '../report/href.ts';

export const getStaticPaths = (async () => {
  const years = (await allTrials()).map(({ trial }) => seasonOf(trial));
  return [...new Set(years)].filter((year) => year !== null).map((year) => ({ params: { year } }));
}) satisfies GetStaticPaths;

/** All trials sown in one year, a box each, for a meeting or a noticeboard. */
export const GET: APIRoute = async ({ params, site: published }) => {
  const { site } = await currentSite();
  const trials = (await getCollection('trials'))
    .filter(({ id, data }) => seasonOf(analysedTrial(id, data.file).trial) === params.year)
    .map(({ id, data: { file } }) => {
      const address = new URL(href(`/trials/${id}/`), published ?? site.base).href;
      return { id, file, address };
    });
  const bytes = await printedDigest({ year: params.year ?? '', site, trials });
  return new Response(bytes as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'application/pdf' } });
};
