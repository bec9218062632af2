import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { glob, type Loader } from 'astro/loaders';
import { contentFolder } from './content-folder.ts';
import { hasProse } from './has-prose.ts';
import { isBuilding } from './kept/build-keeper.ts';

/**
 * The authors' own words, by trial. They are compiled when the page is made, so that what cannot be
 * compiled stops the build. What Astro kept from an earlier build is thrown away first: the same text in
 * another content folder would be looked for in the folder of that build.
 *
 * @param published ids of the trials whose texts are compiled; what stands in others was refused
 */
export function proseLoader(published: () => Promise<readonly string[]>): Loader {
  return {
    name: 'prose',
    load: async (context) => {
      const ids = await published();
      context.store.clear();
      if (ids.length === 0) return;
      const known = new Set(ids);
      const trials = join(contentFolder(), 'trials');
      const isAll = isBuilding() && readdirSync(trials).every((name) => known.has(name) || !hasProse(name));
      const loader = glob({
        base: pathToFileURL(trials).href,
        // Each of ten thousand texts would be held against each of ten thousand patterns.
        pattern: isAll ? '*/report.{md,mdx}' : ids.map((id) => `${id}/report.{md,mdx}`),
        generateId: ({ entry }) => entry.split('/')[0] ?? entry,
        deferRender: true,
      });
      await loader.load(context);
    },
  };
}
