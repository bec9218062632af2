import type { APIRoute, GetStaticPaths } from 'astro';
import { getCollection } from 'astro:content';
import { analysedTrial } from '../files/analysed-trial.ts';
import { printedDigest } from '../files/printed-digest.ts';
import { bookletsOf } from '../print/digest/booklets-of.ts';
import { currentSite } from '../report/current-site.ts';
import { href } from '../report/href.ts';

const booklets = async () =>
  bookletsOf(
    (await getCollection('trials')).map(({ id, data: { file } }) => ({ id, file, ...analysedTrial(id, file) })),
  );

export const getStaticPaths = (async () =>
  (await booklets()).map(({ name }) => ({ params: { booklet: name } }))) satisfies GetStaticPaths;

/** Trials sown in one year, a box each, for a meeting or a noticeboard. */
export const GET: APIRoute = async ({ params, site: published }) => {
  const { site } = await currentSite();
  const booklet = (await booklets()).find(({ name }) => name === params.booklet);
  if (!booklet) throw new Error(`There is no booklet "${params.booklet}".`);
  const { entries, year, part, parts } = booklet;
  const trials = entries.map(({ id, file }) => {
    const address = new URL(href(`/trials/${id}/`), published ?? site.base).href;
    return { id, file, address };
  });
  const bytes = await printedDigest({ season: { year, part, parts }, site, trials });
  return new Response(bytes as Uint8Array<ArrayBuffer>, { headers: { 'content-type': 'application/pdf' } });
};
