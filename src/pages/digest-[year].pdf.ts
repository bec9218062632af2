import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../report/all-trials.ts';
import { buildKeeper } from '../files/kept/build-keeper.ts';
import { digestPdf } from '../print/digest/digest-pdf.ts';
import { seasonOf } from '../print/digest/season-of.ts';
import { currentSite } from '../report/current-site.ts';
import { href } from '../report/href.ts';

export const getStaticPaths = (async () => {
  const years = (await allTrials()).map(({ trial }) => seasonOf(trial));
  return [...new Set(years)].filter((year) => year !== null).map((year) => ({ params: { year } }));
}) satisfies GetStaticPaths;

/** All trials sown in one year, a box each, for a meeting or a noticeboard. */
export const GET: APIRoute = async ({ params, site: published }) => {
  const { site, words } = await currentSite();
  const trials = await allTrials();
  const abouts = trials
    .filter(({ trial }) => seasonOf(trial) === params.year)
    .map(({ trial, analysis }) => {
      const address = new URL(href(`/trials/${trial.id}/`), published ?? site.base).href;
      return { trial, analysis, site, address };
    });
  const year = params.year ?? '';
  const bytes = await buildKeeper().bytes('digest', JSON.stringify([year, abouts]), async () => {
    const told = abouts.map((about) => ({ ...about, words }));
    return digestPdf(year, told, site, words).bytes;
  });
  return new Response(bytes as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'application/pdf' } });
};
