import type { APIRoute } from 'astro';
import { currentSite } from '../report/current-site.ts';
import { href } from '../report/href.ts';

/** Everybody may read everything; where the list of pages is. Heeded where the site stands at the root of its host. */
export const GET: APIRoute = async ({ site: published }) => {
  const { site } = await currentSite();
  const sitemap = new URL(href('/sitemap-index.xml'), published ?? site.base).href;
  return new Response(`User-agent: *\nAllow: /\nSitemap: ${sitemap}\n`);
};
