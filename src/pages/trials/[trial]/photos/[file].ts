import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { shownPhotos } from '../../../../files/shown-photos.ts';

export const getStaticPaths = (async () => {
  const trials = await getCollection('trials');
  const paths = trials.map(async ({ id, data: { trial } }) => {
    const photos = (await shownPhotos(trial)).flatMap(({ groups }) => groups.flat());
    const files = new Set(photos.flatMap((photo) => [...photo.files, ...photo.whole]));
    return [...files].map(({ name, format, bytes }) => ({ params: { trial: id, file: name }, props: { format, bytes } })); // prettier-ignore
  });
  return (await Promise.all(paths)).flat();
}) satisfies GetStaticPaths;

/** A picture of a trial without its metadata. */
export const GET: APIRoute<{ format: string; bytes: Uint8Array<ArrayBuffer> }> = ({ props }) =>
  new Response(props.bytes, { headers: { 'content-type': `image/${props.format}` } });
