import type { APIRoute } from 'astro';
import { allTrials } from '../report/all-trials.ts';
import { atomFeed } from '../archive/atom-feed.ts';
import { feedEntries } from '../archive/feed-entries.ts';
import { currentSite } from '../report/current-site.ts';
import { href } from '../report/href.ts';

/** As many entries as a reader may want at once. */
const MOST = 60;

/** New trials and changed reports, newest first. */
export const GET: APIRoute = async ({ site: published }) => {
  const { site, words } = await currentSite();
  const address = (path: string) => new URL(href(path), published ?? site.base).href;
  const entries = (await allTrials())
    .flatMap(({ trial, analysis }) => feedEntries(words, trial, analysis, address(`/trials/${trial.id}/`)))
    .toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  const feed = atomFeed({
    title: site.name,
    language: words.language,
    home: address('/'),
    self: address('/feed.xml'),
    rights: words.say('footer.licence', { licence: site.licence }),
    entries: entries.slice(0, MOST),
  });
  return new Response(feed, { headers: { 'content-type': 'application/atom+xml; charset=utf-8' } });
};
