import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../../../report/all-trials.ts';
import { dueDates } from '../../../analysis/due-dates.ts';
import { calendar } from '../../../archive/calendar.ts';
import { currentTrial } from '../../../report/current-trial.ts';
import { href } from '../../../report/href.ts';

export const getStaticPaths = (async () =>
  (await allTrials())
    .filter(({ trial }) => dueDates(trial).length > 0)
    .map(({ trial }) => ({ params: { trial: trial.id } }))) satisfies GetStaticPaths;

/** Days to count, to measure, and to test stored seed again, for a calendar. */
export const GET: APIRoute = async ({ params, site: published }) => {
  const { trial, site, words } = await currentTrial(params);
  const address = new URL(href(`/trials/${trial.id}/`), published ?? site.base).href;
  return new Response(calendar(trial, address, words), { headers: { 'content-type': 'text/calendar; charset=utf-8' } });
};
