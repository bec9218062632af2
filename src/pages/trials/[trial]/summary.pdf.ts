import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { printed } from '../../../files/printed.ts';
import { currentTrial } from '../../../report/current-trial.ts';
import { href } from '../../../report/href.ts';

export const getStaticPaths = (async () =>
  (await getCollection('trials')).map(({ id }) => ({ params: { trial: id } }))) satisfies GetStaticPaths;

/** The report on one or two pages, for a noticeboard or a folder. */
export const GET: APIRoute = async ({ params, site: published }) => {
  const { words: _, repeats: __, ...report } = await currentTrial(params);
  const address = new URL(href(`/trials/${report.trial.id}/`), published ?? report.site.base).href;
  const bytes = await printed('summary', { ...report, address });
  return new Response(bytes as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'application/pdf' } });
};
