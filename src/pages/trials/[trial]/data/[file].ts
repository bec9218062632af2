import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { isBuilding } from '../../../../files/kept/build-keeper.ts';
import { keptFiles } from '../../../../files/kept-files.ts';
import { mediaType } from '../../../../files/media-type.ts';
import { writeBeside } from '../../../../files/write-beside.ts';
import { allTrials } from '../../../../report/all-trials.ts';
import { currentSite } from '../../../../report/current-site.ts';
import { currentTrial } from '../../../../report/current-trial.ts';

/** In a build it brings the other files of its folder along: Astro takes ten times as long over a file as the file itself. */
const FIRST = 'SHA256SUMS';

export const getStaticPaths = (async () => {
  if (isBuilding()) return (await getCollection('trials')).map(({ id }) => ({ params: { trial: id, file: FIRST } }));
  const { site } = await currentSite();
  const paths: { params: { trial: string; file: string } }[] = [];
  for (const { trial, analysis } of await allTrials()) {
    const files = await keptFiles(trial, analysis, site);
    paths.push(...files.map(({ name }) => ({ params: { trial: trial.id, file: name } })));
  }
  return paths;
}) satisfies GetStaticPaths;

/** A file of the trial's data folder, byte for byte. */
export const GET: APIRoute = async ({ params }) => {
  const { trial, analysis, site } = await currentTrial(params);
  const files = await keptFiles(trial, analysis, site);
  const [file, others] = [
    files.find(({ name }) => name === params.file),
    files.filter(({ name }) => name !== params.file),
  ];
  if (isBuilding()) writeBeside(`trials/${trial.id}/data`, others);
  return new Response(file?.bytes as Uint8Array<ArrayBuffer>, {
    headers: { 'content-type': mediaType(params.file ?? '') },
  });
};
