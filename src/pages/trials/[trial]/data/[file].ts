import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { keptFiles } from '../../../../files/kept-files.ts';
import { currentSite } from '../../../../report/current-site.ts';

const TYPES: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  json: 'application/json',
  R: 'text/plain; charset=utf-8',
  SHA256SUMS: 'text/plain; charset=utf-8',
  yaml: 'text/yaml',
  zip: 'application/zip',
};

export const getStaticPaths = (async () => {
  const trials = await getCollection('trials');
  const { site } = await currentSite();
  const paths = trials.map(async ({ id, data: { trial, analysis } }) => {
    const files = await keptFiles(trial, analysis, site);
    return files.map(({ name, bytes }) => ({ params: { trial: id, file: name }, props: { bytes } }));
  });
  return (await Promise.all(paths)).flat();
}) satisfies GetStaticPaths;

/** A file of the trial's data folder, byte for byte. */
export const GET: APIRoute<{ bytes: Uint8Array<ArrayBuffer> }> = ({ params, props }) => {
  const type = TYPES[params.file?.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
  return new Response(props.bytes, { headers: { 'content-type': type } });
};
