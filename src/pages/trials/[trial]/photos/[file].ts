import type { APIRoute, GetStaticPaths } from 'astro';
import { allTrials } from '../../../../report/all-trials.ts';
import { fewAtOnce } from '../../../../files/few-at-once.ts';
import { shownPhotos } from '../../../../files/shown-photos.ts';

export const getStaticPaths = (async () => {
  const paths = await fewAtOnce(await allTrials(), async ({ trial }) => {
    const photos = (await shownPhotos(trial)).flatMap(({ groups }) => groups.flat());
    const files = new Set(photos.flatMap((photo) => [...photo.files, ...photo.whole]));
    return [...files].map(({ name, format, bytes }) => ({ params: { trial: trial.id, file: name }, props: { format, bytes } })); // prettier-ignore
  });
  return paths.flat();
}) satisfies GetStaticPaths;

/** A picture of a trial without its metadata. */
export const GET: APIRoute<{ format: string; bytes: Uint8Array<ArrayBuffer> }> = ({ props }) =>
  new Response(props.bytes, { headers: { 'content-type': `image/${props.format}` } });
