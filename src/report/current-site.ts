import { getEntry } from 'astro:content';
import type { Site } from '../trial/trial.ts';
import { wordsFor } from '../wording/words-for.ts';
import type { Words } from '../wording/words.ts';

/** The publisher and the words of its language, for any page. */
export async function currentSite(): Promise<{ site: Site; words: Words }> {
  const entry = await getEntry('site', 'site');
  if (!entry) throw new Error('The site has not been read: src/files/loader.ts fills the collection "site".');
  return { site: entry.data, words: wordsFor(entry.data.language) };
}
