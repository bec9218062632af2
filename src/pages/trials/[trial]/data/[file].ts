import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../../../../report/all-trials.ts';
import { keptFiles } from '../../../../files/kept-files.ts';
import { mediaType } from '../../../../files/media-type.ts';
import { currentSite } from '../../../../report/current-site.ts';

export const getStaticPaths = (async () => {
  const trials = await allTrials();
  const { site } = await currentSite();
  const paths = trials.map(async ({ trial, analysis }) => {
    const files = await keptFiles(trial, analysis, site);
    return files.map(({ name, bytes }) => ({ params: { trial: trial.id, file: name }, props: { bytes } }));
  });
  return (await Promise.all(paths)).flat();
}) satisfies GetStaticPaths;

/** A file of the trial's data folder, byte for byte. */
export const GET: APIRoute<{ bytes: Uint8Array<ArrayBuffer> }> = ({ params, props }) => {
  return new Response(props.bytes, { headers: { 'content-type': mediaType(params.file ?? '') } });
};
