import type { APIRoute, GetStaticPaths } from 'astro';
import { allQuestions } from '../../../../report/all-questions.ts';
import { mediaType } from '../../../../files/media-type.ts';
import { questionFiles } from '../../../../files/question-files.ts';
import { currentSite } from '../../../../report/current-site.ts';

export const getStaticPaths = (async () => {
  const { site } = await currentSite();
  const paths = (await allQuestions()).map(async ({ id, data: { question, pooled } }) =>
    (await questionFiles(question, pooled, site)).map(({ name, bytes }) => ({
      params: { question: id, file: name },
      props: { bytes },
    })),
  );
  return (await Promise.all(paths)).flat();
}) satisfies GetStaticPaths;

/** A file of the question's data folder, byte for byte. */
export const GET: APIRoute<{ bytes: Uint8Array<ArrayBuffer> }> = ({ params, props }) =>
  new Response(props.bytes, { headers: { 'content-type': mediaType(params.file ?? '') } });
