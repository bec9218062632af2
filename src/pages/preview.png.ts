import type { APIRoute } from 'astro';
import { pngOf } from '../print/preview/png-of.ts';
import { previewCard } from '../print/preview/preview-card.ts';
import { currentSite } from '../report/current-site.ts';

/** What is shown where a page without a picture of its own is shared. */
export const GET: APIRoute = async () => {
  const { site, words } = await currentSite();
  const { 'home.title': title, 'home.intro': asked } = words.ui;
  const below = site.base.replace(/^https?:\/\//, '').replace(/\/$/, '');
  const bytes = pngOf(previewCard({ above: site.name, title, asked, found: null, below }));
  return new Response(bytes, { headers: { 'content-type': 'image/png' } });
};
