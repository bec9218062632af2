import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../../../../report/all-trials.ts';
import { fewAtOnce } from '../../../../files/few-at-once.ts';
import { keptFiles } from '../../../../files/kept-files.ts';
import { listedFiles } from '../../../../files/listed-files.ts';
import { mediaType } from '../../../../files/media-type.ts';
import { currentTrial } from '../../../../report/current-trial.ts';
import { currentSite } from '../../../../report/current-site.ts';

export const getStaticPaths = (async () => {
  const { site } = await currentSite();
  const paths = await fewAtOnce(await allTrials(), async ({ trial, analysis }) => {
    const files = await listedFiles(trial, analysis, site);
    return files.map(({ name }) => ({ params: { trial: trial.id, file: name } }));
  });
  return paths.flat();
}) satisfies GetStaticPaths;

/** A file of the trial's data folder, byte for byte. */
export const GET: APIRoute = async ({ params }) => {
  const { trial, analysis, site } = await currentTrial(params);
  const file = (await keptFiles(trial, analysis, site)).find(({ name }) => name === params.file);
  return new Response(file?.bytes as Uint8Array<ArrayBuffer>, {
    headers: { 'content-type': mediaType(params.file ?? '') },
  });
};
