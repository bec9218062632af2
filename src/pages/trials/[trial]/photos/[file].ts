import { join } from 'node:path';
import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { publishedPhoto } from '../../../../files/published-photo.ts';
import { trialFolder } from '../../../../files/trial-folder.ts';

export const getStaticPaths = (async () => {
  const trials = await getCollection('trials');
  const photos = trials.flatMap(({ id, data: { trial } }) =>
    trial.photos.map(async ({ file }) => {
      const { name, bytes } = await publishedPhoto(join(trialFolder(id), file));
      return { params: { trial: id, file: name }, props: { bytes } };
    }),
  );
  return Promise.all(photos);
}) satisfies GetStaticPaths;

/** A picture of a trial without its metadata. */
export const GET: APIRoute<{ bytes: Uint8Array<ArrayBuffer> }> = ({ props }) =>
  new Response(props.bytes, { headers: { 'content-type': 'image/webp' } });
