import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { pngOf } from '../../../print/preview/png-of.ts';
import { previewCard } from '../../../print/preview/preview-card.ts';
import { trialPreview } from '../../../print/preview/trial-preview.ts';
import { currentTrial } from '../../../report/current-trial.ts';

export const getStaticPaths = (async () =>
  (await getCollection('trials')).map(({ id }) => ({ params: { trial: id } }))) satisfies GetStaticPaths;

/** What is shown where the report is shared. */
export const GET: APIRoute = async ({ params }) => {
  const { trial, analysis, site, words } = await currentTrial(params);
  const card = previewCard(trialPreview(trial, analysis, site, words));
  return new Response(pngOf(card) as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'image/png' } });
};
