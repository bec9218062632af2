import type { APIRoute, GetStaticPaths } from 'astro';
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
  const trials = (await allTrials())
    .filter(({ trial }) => seasonOf(trial) === params.year)
    .map(({ trial, analysis }) => {
      const address = new URL(href(`/trials/${trial.id}/`), published ?? site.base).href;
      return { trial, analysis, address };
    });
  const bytes = await printedDigest({ year: params.year ?? '', site, trials });
  return new Response(bytes as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'application/pdf' } });
};
